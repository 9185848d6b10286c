//! Links, codes and files from outside: what may happen to them, and what was ever shipped.

mod class;
mod codes;
mod designs;
mod detection;
mod largest;
mod notebooks;
mod parts;
mod photograph;
mod results;
mod routes;
mod shipped;
mod symbols;
