//! The reception, without any channel.
