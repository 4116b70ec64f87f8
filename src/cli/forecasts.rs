//! Fetching forecasts: cell by cell beside the answers, never in the way of one.

use super::arguments::Sources;
use super::front::system_clock;
use super::refusal::Refusal;
use crate::channel::counts::Counts;
use crate::desk::sky::{Due, Filed, Rooms, due, file};
use crate::garden::{Store, StoreError};
use crate::weather::Service;
use crate::weather::schedule::pause;
use crate::weather::source::{Fault, Provider, providers};
use chrono::{DateTime, FixedOffset, Utc};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;
use tokio::task::JoinSet;

/// Between two looks for cells that are due.
const LOOK: Duration = Duration::from_secs(120);
/// So many calls are on their way at once, all services together.
const AT_ONCE: usize = 2;

/// A service that is left alone: how often it failed in a row, and until when.
type Pauses = Mutex<BTreeMap<Service, (u32, DateTime<Utc>)>>;

/// Who fetches.
#[derive(Clone)]
pub struct Forecasts {
    store: Arc<dyn Store>,
    providers: Arc<Vec<Box<dyn Provider>>>,
    counts: Arc<Counts>,
    pauses: Arc<Pauses>,
    /// A moment that was fixed; else the clock's.
    fixed: Option<DateTime<Utc>>,
}

/// What one service gave for one cell.
pub type Told = (Service, Filed);

impl Forecasts {
    /// For the sources of the settings; none where nothing is to be fetched.
    pub fn of(sources: &Sources, store: Arc<dyn Store>, counts: Arc<Counts>) -> Result<Option<Self>, Refusal> {
        let providers = providers(&sources.weather, sources.weather_contact.as_deref()).map_err(Refusal::plain)?;
        if providers.is_empty() {
            return Ok(None);
        }
        if sources.weather_contact.is_none() && providers.iter().any(|provider| provider.service() != Service::File) {
            tracing::warn!("ROOFTEND_WEATHER_CONTACT is not set: forecast services ask whom they may write to");
        }
        Ok(Some(Self { store, providers: Arc::new(providers), counts, pauses: Arc::default(), fixed: None }))
    }

    /// The same at a fixed moment.
    pub fn at(self, now: Option<DateTime<FixedOffset>>) -> Self {
        Self { fixed: now.map(|now| now.with_timezone(&Utc)), ..self }
    }

    fn now(&self) -> DateTime<Utc> {
        self.fixed.unwrap_or_else(|| system_clock().with_timezone(&Utc))
    }

    /// Looks every two minutes until the task is ended.
    pub async fn run(self) {
        loop {
            if let Err(fault) = self.look().await {
                tracing::error!(%fault, "forecasts could not be looked after");
            }
            tokio::time::sleep(LOOK).await;
        }
    }

    /// Asks for every cell that is due.
    async fn look(&self) -> Result<(), StoreError> {
        let store = self.store.clone();
        let now = self.now();
        let rooms = blocking(move || due(store.as_ref(), &store.sites()?, now)).await?;
        let Rooms { cells, due, .. } = rooms;
        let mut asked = JoinSet::new();
        for due in due {
            if self.all_paused() {
                break;
            }
            while asked.len() >= AT_ONCE {
                asked.join_next().await;
            }
            let this = self.clone();
            asked.spawn(async move {
                if let Err(fault) = this.fetch(&due, cells).await {
                    tracing::error!(%fault, "a forecast could not be filed");
                }
            });
        }
        while asked.join_next().await.is_some() {}
        Ok(())
    }

    /// Asks the services for one cell, in their order, until one has something; says what each gave.
    pub async fn fetch(&self, due: &Due, cells: usize) -> Result<Vec<Told>, StoreError> {
        let mut told = Vec::new();
        for provider in self.providers.iter() {
            let service = provider.service();
            if self.is_paused(service) {
                continue;
            }
            let answered = provider.ask(due.spot.cell, due.since(service)).await;
            let fault = answered.as_ref().err().cloned();
            self.note(service, fault.as_ref());
            let (store, spot) = (self.store.clone(), due.spot);
            let now = self.now();
            let filed = blocking(move || file(store.as_ref(), &spot, service, answered, now, cells)).await?;
            self.log(service, &filed);
            let done = !matches!(filed, Filed::Kept(_));
            told.push((service, filed));
            if done {
                break;
            }
        }
        Ok(told)
    }

    fn log(&self, service: Service, filed: &Filed) {
        match filed {
            Filed::New { days, unmade, deprecated } => {
                self.counts.forecasts.add(1);
                tracing::info!(%service, days, unmade = unmade.len(), "a forecast came");
                for why in unmade {
                    tracing::debug!(%service, why, "a day was left out");
                }
                if *deprecated {
                    tracing::warn!(%service, "the service says that this product ends (203): a newer rooftend is needed");
                }
            }
            Filed::Same => {
                self.counts.forecasts.add(1);
                tracing::debug!(%service, "the forecast is still the newest");
            }
            Filed::Kept(fault) => {
                self.counts.forecast_failures.add(1);
                tracing::warn!(%fault, "no forecast was taken; the last good one stays");
            }
        }
    }

    fn note(&self, service: Service, fault: Option<&Fault>) {
        let mut pauses = self.pauses.lock().unwrap_or_else(PoisonError::into_inner);
        match fault.filter(|fault| fault.is_of_the_service()) {
            Some(fault) => {
                let failures = pauses.get(&service).map_or(0, |(failures, _)| *failures).saturating_add(1);
                pauses.insert(service, (failures, self.now() + pause(fault, failures)));
            }
            None => {
                pauses.remove(&service);
            }
        }
    }

    fn is_paused(&self, service: Service) -> bool {
        let pauses = self.pauses.lock().unwrap_or_else(PoisonError::into_inner);
        pauses.get(&service).is_some_and(|(_, until)| *until > self.now())
    }

    fn all_paused(&self) -> bool {
        self.providers.iter().all(|provider| self.is_paused(provider.service()))
    }
}

/// Work on the store, away from the tasks that wait.
async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, StoreError> + Send + 'static,
) -> Result<T, StoreError> {
    let done = tokio::task::spawn_blocking(work).await;
    done.unwrap_or_else(|_| Err(StoreError::Failed("the work ended early".to_owned())))
}
