//! Updates brought to us: an address that the platform calls, behind whatever ends the encryption in front of it. Each
//! update is filed to disk before it is acknowledged; without the secret nothing is read.

use super::call::call;
use super::fault::Fault;
use super::poll::{UPDATES, file};
use super::{Line, Unusable, back_off};
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::{Request, State};
use axum::http::{Method, StatusCode};
use ring::hmac;
use ring::rand::SystemRandom;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use teloxide::payloads::{GetWebhookInfo, SetWebhook, SetWebhookSetters};
use teloxide::types::{Update, WebhookInfo};
use tokio::net::TcpListener;
use tokio::task::JoinHandle;

/// Where updates are brought.
#[derive(Debug, Clone)]
pub struct Webhook {
    /// The address that the platform calls.
    pub url: String,
    /// What it sends along, so that nobody else is heard.
    pub secret: String,
    /// Where we listen for it.
    pub listen: SocketAddr,
}

/// The header that carries the secret.
const SECRET_HEADER: &str = "X-Telegram-Bot-Api-Secret-Token";
/// An update is some kilobytes at most.
const LARGEST: usize = 256 * 1024;
/// A body that takes longer to come is none of ours.
const SLOWEST: Duration = Duration::from_secs(10);
/// So many updates at once; those of one chat come one after the other all the same.
const AT_ONCE: u8 = 10;
/// Between two looks whether the address still stands.
const LOOK: Duration = Duration::from_secs(60);

/// A secret that is compared in a time that says nothing of it: both sides are marked with a key of this run.
struct Secret {
    key: hmac::Key,
    mark: hmac::Tag,
}

impl Secret {
    fn new(secret: &str) -> Result<Self, Unusable> {
        let key = hmac::Key::generate(hmac::HMAC_SHA256, &SystemRandom::new()).map_err(|_| Unusable::Client)?;
        let mark = hmac::sign(&key, secret.as_bytes());
        Ok(Self { key, mark })
    }

    fn is(&self, given: &[u8]) -> bool {
        hmac::verify(&self.key, given, self.mark.as_ref()).is_ok()
    }
}

/// What a call is dealt with by.
struct Door {
    line: Line,
    secret: Secret,
}

/// Listens, and has the platform told where.
pub struct Open {
    line: Line,
    webhook: Webhook,
    serving: JoinHandle<()>,
}

impl Open {
    /// Takes the address to listen on, then tells the platform, for as long as that takes.
    ///
    /// # Errors
    /// [`Unusable::Listen`], and [`Unusable::Webhook`] when the platform refuses the address.
    pub async fn at(mut line: Line, webhook: Webhook) -> Result<Self, Unusable> {
        let listener = TcpListener::bind(webhook.listen).await;
        let listener = listener.map_err(|fault| Unusable::Listen(webhook.listen, fault.kind().to_string()))?;
        let door = Arc::new(Door { line: line.clone(), secret: Secret::new(&webhook.secret)? });
        let app = Router::new().fallback(take).with_state(door);
        let mut stop = line.stop.clone();
        let serving = tokio::spawn(async move {
            let stopped = async move {
                let _ = stop.wait_for(|stop| *stop).await;
            };
            if axum::serve(listener, app).with_graceful_shutdown(stopped).await.is_err() {
                tracing::error!("nobody listens for updates any more");
            }
        });
        let mut failures = 0;
        while !line.stopping() {
            match set(&line, &webhook).await {
                Ok(()) => {
                    line.counts.polled((line.clock)().timestamp());
                    break;
                }
                Err(Fault::Refused(_)) => return Err(Unusable::Webhook),
                Err(fault) => {
                    failures += 1;
                    tracing::warn!(why = fault.word(), failures, "the web address could not be told yet");
                    line.rest(back_off(failures)).await;
                }
            }
        }
        Ok(Self { line, webhook, serving })
    }

    /// Serves until told to stop; sees to it that the address stands.
    pub async fn run(mut self) {
        while !self.line.stopping() {
            self.line.rest(LOOK).await;
            if !self.line.stopping() {
                self.look().await;
            }
        }
        // Calls that are being answered are answered still.
        let _ = tokio::time::timeout(SLOWEST, self.serving).await;
    }

    /// Another program that polls, or sets its own, takes the address away: it is set again.
    async fn look(&self) {
        let line = &self.line;
        let fault = match call::<_, WebhookInfo>(&line.bot, &GetWebhookInfo::new()).await {
            Ok(info) => {
                line.counts.polled((line.clock)().timestamp());
                let waiting = info.pending_update_count;
                if info.last_error_date.is_some() && waiting > 0 {
                    tracing::warn!(waiting, "the platform could not bring all updates to the web address");
                }
                let ours = info.url.as_ref().map(|url| url.as_str().trim_end_matches('/').to_owned());
                if ours.as_deref() == Some(self.webhook.url.trim_end_matches('/')) {
                    return;
                }
                tracing::warn!("updates went elsewhere: the web address is set again");
                set(line, &self.webhook).await.err()
            }
            Err(fault) => Some(fault),
        };
        if let Some(fault) = fault {
            line.counts.poll_failures.add(1);
            tracing::warn!(why = fault.word(), "the web address could not be looked after");
        }
    }
}

async fn set(line: &Line, webhook: &Webhook) -> Result<(), Fault> {
    let url = webhook.url.parse().map_err(|_| Fault::Refused("no address"))?;
    let set = SetWebhook::new(url).secret_token(webhook.secret.clone());
    let set = set.max_connections(AT_ONCE).allowed_updates(UPDATES);
    call(&line.bot, &set).await.map(|_: bool| ())
}

/// One call: the secret first, then the body, then to disk, and only then "got it".
async fn take(State(door): State<Arc<Door>>, request: Request<Body>) -> StatusCode {
    let given = request.headers().get(SECRET_HEADER).map(|value| value.as_bytes().to_vec()).unwrap_or_default();
    if !door.secret.is(&given) {
        return StatusCode::UNAUTHORIZED;
    }
    if request.method() != Method::POST {
        return StatusCode::METHOD_NOT_ALLOWED;
    }
    let body = match tokio::time::timeout(SLOWEST, to_bytes(request.into_body(), LARGEST)).await {
        Ok(Ok(body)) => body,
        Ok(Err(_)) => return StatusCode::PAYLOAD_TOO_LARGE,
        Err(_) => return StatusCode::REQUEST_TIMEOUT,
    };
    let Ok(update) = serde_json::from_slice::<Update>(&body) else {
        return StatusCode::BAD_REQUEST;
    };
    door.line.counts.polled((door.line.clock)().timestamp());
    if file(&door.line, vec![update]).await {
        door.line.came_in.notify_one();
        StatusCode::OK
    } else {
        // Brought again later.
        StatusCode::INTERNAL_SERVER_ERROR
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_secret_is_the_secret() {
        let secret = Secret::new("abc_DEF-1").unwrap();
        assert!(secret.is(b"abc_DEF-1"));
        for wrong in ["", "abc_DEF-", "abc_DEF-2", "abc_DEF-1 ", "ABC_DEF-1"] {
            assert!(!secret.is(wrong.as_bytes()), "{wrong}");
        }
    }
}
