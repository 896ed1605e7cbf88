//! What may be said: the wording guard clause by clause, and every sentence that the program says of a pair.

mod said;
mod withheld;
mod wording;
