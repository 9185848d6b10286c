//! Links and files from outside: what may happen to them, and what was ever shipped.

mod designs;
mod detection;
mod largest;
mod shipped;
