//! Sheets of paper of a lesson.

pub mod teacher;
