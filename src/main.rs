//! The door: everything is in the library.

fn main() -> std::process::ExitCode {
    rooftend::cli::main()
}
