//! Providers of days. The one for files is here; others stand beside it.

pub mod file;
