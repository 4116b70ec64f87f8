pub mod nothing {}
