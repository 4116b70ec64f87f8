//! The local socket: other commands of the same account reach the store of a running process.

use crate::garden::Store;
use crate::garden::store::remote::{answer, socket};
use std::fs::Permissions;
use std::io;
use std::os::unix::fs::{DirBuilderExt, PermissionsExt};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use tokio::io::{AsyncBufReadExt, AsyncWriteExt, BufReader};
use tokio::net::{UnixListener, UnixStream};
use tokio::sync::Notify;

/// The socket, taken away when it is dropped.
pub struct Socket {
    listener: UnixListener,
    path: PathBuf,
}

impl Socket {
    /// Opens the socket of a store's folder. It is made in a folder that only this account may enter and
    /// moved into place once nobody else may use it.
    ///
    /// # Errors
    /// When it cannot be made: the path of a socket must be short.
    pub fn open(folder: &Path) -> io::Result<Self> {
        let path = socket(folder);
        let private = folder.join(format!(".socket-{}", std::process::id()));
        std::fs::DirBuilder::new().mode(0o700).recursive(true).create(&private)?;
        let made = private.join("s");
        let opened = UnixListener::bind(&made).and_then(|listener| {
            std::fs::set_permissions(&made, Permissions::from_mode(0o600))?;
            std::fs::rename(&made, &path)?;
            Ok(listener)
        });
        // Whatever happened, the folder has served its purpose.
        let _ = std::fs::remove_dir_all(&private);
        Ok(Self { listener: opened?, path })
    }

    /// Answers until the task is ended; whoever waits for `done` learns that a caller has finished.
    pub async fn run(self, store: Arc<dyn Store>, done: Arc<Notify>) {
        loop {
            if let Ok((stream, _)) = self.listener.accept().await {
                let (store, done) = (store.clone(), done.clone());
                tokio::spawn(async move {
                    // A caller that goes away needs no answer.
                    let _ = serve(stream, store).await;
                    done.notify_one();
                });
            }
        }
    }
}

impl Drop for Socket {
    fn drop(&mut self) {
        // One that is gone already is no fault.
        let _ = std::fs::remove_file(&self.path);
    }
}

async fn serve(stream: UnixStream, store: Arc<dyn Store>) -> io::Result<()> {
    let (read, mut write) = stream.into_split();
    let mut lines = BufReader::new(read).lines();
    while let Some(line) = lines.next_line().await? {
        let store = store.clone();
        let answered = tokio::task::spawn_blocking(move || answer(store.as_ref(), &line)).await;
        let answered = answered.map_err(io::Error::other)?;
        write.write_all(answered.as_bytes()).await?;
        write.write_all(b"\n").await?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::garden::store::remote::RemoteStore;
    use crate::garden::{Change, Overlay, Person, PersonId, Role};

    #[tokio::test(flavor = "multi_thread", worker_threads = 2)]
    async fn another_process_reads_and_writes_through_it() {
        let folder = tempfile::tempdir().unwrap();
        let store: Arc<dyn Store> = Arc::new(Overlay::in_memory());
        assert!(RemoteStore::reach(folder.path()).is_none());
        let opened = Socket::open(folder.path()).unwrap();
        let mode = std::fs::metadata(socket(folder.path())).unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o600);
        let task = tokio::spawn(opened.run(store.clone(), Arc::new(Notify::new())));
        let path = folder.path().to_owned();
        let outside = tokio::task::spawn_blocking(move || {
            let remote = RemoteStore::reach(&path).unwrap();
            let id = PersonId::new("meera").unwrap();
            let meera =
                Person {
                    id: id.clone(), name: "मीरा\n|".into(), role: Role::Client, sites: vec![], speaks: None
                };
            remote.write(vec![Change::put(meera.clone())]).unwrap();
            assert_eq!(remote.person(&id).unwrap(), Some(meera.clone()));
            assert_eq!(remote.people().unwrap(), std::slice::from_ref(&meera));
            assert_eq!(remote.whole().unwrap().people, std::slice::from_ref(&meera));
            meera
        });
        let meera = outside.await.unwrap();
        assert_eq!(store.people().unwrap(), [meera]);
        task.abort();
        let _ = task.await;
        assert!(!socket(folder.path()).exists(), "it is taken away");
    }
}
