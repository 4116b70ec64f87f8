//! What is typed with a slash.

use super::card::Card;
use super::invite::{Invite, Whom, id_for, plain_id};
use super::letter::Content;
use super::menu::menu;
use super::turn::{Turn, language_of};
use crate::garden::rights::{may_go_round, may_manage, may_see_questions};
use crate::garden::{Change, Person, PersonId, Role, SiteId, Slip, Speaks, Store, StoreError};
use crate::script::Language;
use crate::wording::filled;
use chrono::Utc;

impl Turn<'_> {
    /// A command, without its slash.
    pub fn command(&mut self, typed: &str) -> Result<(), StoreError> {
        let (word, rest) = typed.split_once(char::is_whitespace).unwrap_or((typed, ""));
        // In some chats the bot's name stands behind the command.
        let word = word.split('@').next().unwrap_or_default().to_lowercase();
        let rest = rest.trim();
        // Whoever gives a command is past what was asked.
        self.await_nothing()?;
        match word.as_str() {
            "start" if !rest.is_empty() => match Self::token_of_bed(rest) {
                Some(token) => self.open_bed(token),
                None => self.redeem(rest),
            },
            "start" => {
                self.hello()?;
                // What the menu offers may be more than it was when they came in.
                if self.person.is_some() {
                    self.send_menu();
                }
                Ok(())
            }
            "help" => {
                self.say("bot-help", &[]);
                if may_go_round(self.person.as_ref()) {
                    self.say("crew-help", &[]);
                }
                Ok(())
            }
            "questions" => self.list_questions(),
            "invite" => self.invite(rest),
            "people" => self.people(),
            "remove" => self.remove(rest),
            "language" => self.choose_language(rest),
            "round" => self.round(rest),
            "visits" => self.list_visits(),
            "note" => self.notes_of_today(),
            "newsite" => self.new_site(rest, None),
            "codes" => self.list_codes(rest),
            "newcode" => self.new_code(rest),
            "me" => self.show_kept(),
            "export" => self.export(),
            "forget" => self.ask_to_forget(),
            _ => {
                self.say("bot-command-unknown", &[]);
                Ok(())
            }
        }
    }

    fn hello(&mut self) -> Result<(), StoreError> {
        match self.person.clone() {
            Some(person) => {
                let role = self.role(self.language, person.role);
                self.say("bot-hello", &[("name", &person.name), ("role", &role)]);
            }
            None => self.say("bot-hello-stranger", &[]),
        }
        Ok(())
    }

    /// A code lets its holder in, once.
    fn redeem(&mut self, code: &str) -> Result<(), StoreError> {
        let now = self.now.with_timezone(&Utc);
        let Some(invite) = Invite::behind(self.sheet, code, now)? else {
            self.say("bot-code-wrong", &[]);
            return Ok(());
        };
        if let Some(person) = self.person.clone() {
            self.say("bot-code-not-needed", &[("name", &person.name)]);
            return Ok(());
        }
        let known = match &invite.person {
            Some(id) => self.sheet.person(id)?,
            None => None,
        };
        let person = match known {
            Some(person) => person,
            None => self.new_person(&invite)?,
        };
        let language = self.language;
        let card = Card { chat: self.arrival.chat, person: person.id.clone(), language, since: now, blocked: false };
        let mut changes = vec![Change::put(person.clone()), card.put()?, invite.taken_away()?];
        // A person has one chat: the one before is a stranger's from now on.
        if let Some(before) = Card::of_person(self.sheet, &person.id)? {
            changes.push(before.taken_away()?);
        }
        if invite.claim {
            for other in Invite::all(self.sheet)?.into_iter().filter(|other| other.claim && other.id != invite.id) {
                changes.push(other.taken_away()?);
            }
        }
        self.sheet.write(changes)?;
        self.tell_owners(&person)?;
        self.language = language_of(Some(&person), &card);
        self.memory.strangers.remove(&self.arrival.chat);
        (self.person, self.card) = (Some(person), Some(card));
        self.hello()?;
        self.send_menu();
        Ok(())
    }

    fn new_person(&self, invite: &Invite) -> Result<Person, StoreError> {
        let name = if invite.name.is_empty() { self.arrival.name.trim() } else { invite.name.as_str() };
        let name = if name.is_empty() { invite.role.word() } else { name }.to_owned();
        let id = id_for(&name, self.sheet)?;
        Ok(Person { id, name, role: invite.role, sites: invite.sites.clone(), speaks: None })
    }

    fn tell_owners(&mut self, came: &Person) -> Result<(), StoreError> {
        for (card, owner) in self.crew(&[])? {
            if card.chat == self.arrival.chat || owner.id == came.id {
                continue;
            }
            let language = language_of(Some(&owner), &card);
            let role = self.role(language, came.role);
            let told = filled(self.house.phrases(language), "bot-came-in", &[("name", &came.name), ("role", &role)]);
            self.text_to(card.chat, &told, Vec::new(), None, None);
        }
        Ok(())
    }

    /// The menu of this chat, by role and language.
    fn send_menu(&mut self) {
        let role = self.person.as_ref().map(|person| person.role);
        let commands = menu(self.house, role, self.language);
        self.write(self.arrival.chat, Content::Menu { commands }, None);
    }

    /// `gardener NAME site…`, `client NAME site…`, or the id of a person who is known.
    fn invite(&mut self, rest: &str) -> Result<(), StoreError> {
        if !may_manage(self.person.as_ref()) {
            self.say("bot-owner-only", &[]);
            return Ok(());
        }
        let words: Vec<&str> = rest.split_whitespace().collect();
        let role = words.first().and_then(|word| Role::with_word(&word.to_lowercase()));
        match (role, words.as_slice()) {
            (Some(role @ (Role::Client | Role::Gardener)), [_, named @ ..]) if !named.is_empty() => {
                self.invite_as(role, named)
            }
            (None, [id]) => match self.known(id)? {
                Some(person) => self.invite_known(&person),
                None => self.person_unknown(id),
            },
            _ => {
                self.say("bot-invite-usage", &[]);
                Ok(())
            }
        }
    }

    /// The words at the end that are sites are sites; the words before are the name.
    fn invite_as(&mut self, role: Role, words: &[&str]) -> Result<(), StoreError> {
        let is_site =
            |word: &str| SiteId::new(word).is_ok_and(|id| self.sheet.site(&id).is_ok_and(|site| site.is_some()));
        let named = words.iter().rposition(|word| !is_site(word)).map_or(0, |last| last + 1);
        let (name, sites) = words.split_at_checked(named).unwrap_or((words, &[]));
        // A word with a digit or hyphen in a place where a site may stand is a site mistyped.
        let mistyped = name.iter().skip(1).find(|word| word.contains(|c: char| c == '-' || c.is_ascii_digit()));
        if let Some(site) = mistyped {
            let all: Vec<String> = self.sheet.sites()?.iter().map(|site| site.id.to_string()).collect();
            self.say("bot-site-unknown", &[("site", site), ("sites", &all.join(", "))]);
            return Ok(());
        }
        if name.is_empty() || role == Role::Client && sites.is_empty() {
            self.say("bot-invite-usage", &[]);
            return Ok(());
        }
        let name = name.join(" ");
        let known = plain_id(&name).map(|id| self.known(&id)).transpose()?.flatten();
        if let Some(person) = known.filter(|person| person.role == role) {
            return self.invite_known(&person);
        }
        let sites = sites.iter().filter_map(|site| SiteId::new(site).ok()).collect();
        self.make_invite(None, name, role, sites)
    }

    fn invite_known(&mut self, person: &Person) -> Result<(), StoreError> {
        self.make_invite(Some(person.id.clone()), person.name.clone(), person.role, Vec::new())?;
        self.say("bot-invite-known", &[("name", &person.name)]);
        Ok(())
    }

    fn make_invite(
        &mut self,
        person: Option<PersonId>,
        name: String,
        role: Role,
        sites: Vec<SiteId>,
    ) -> Result<(), StoreError> {
        let made = self.now.with_timezone(&Utc);
        let (invite, code) = Invite::new(Whom { person, name, role, sites }, made, false)?;
        self.sheet.write(vec![invite.put()?])?;
        let role = self.role(self.language, role);
        let code = code.as_str();
        let first = self.phrase("bot-invite-made", &[("name", &invite.name), ("role", &role), ("code", code)]);
        let bot = self.memory.username.clone();
        let link = bot.map_or_else(|| "-".to_owned(), |bot| format!("https://t.me/{bot}?start={code}"));
        let second = self.phrase("bot-invite-link", &[("link", &link), ("code", code)]);
        self.text_out(&format!("{first}\n{second}"), Vec::new(), None);
        Ok(())
    }

    fn known(&self, id: &str) -> Result<Option<Person>, StoreError> {
        match PersonId::new(&id.to_lowercase()) {
            Ok(id) => self.sheet.person(&id),
            Err(_) => Ok(None),
        }
    }

    fn person_unknown(&mut self, id: &str) -> Result<(), StoreError> {
        let all: Vec<String> = self.sheet.people()?.iter().map(|person| person.id.to_string()).collect();
        self.say("bot-person-unknown", &[("person", id), ("people", &all.join(", "))]);
        Ok(())
    }

    fn people(&mut self) -> Result<(), StoreError> {
        if !may_manage(self.person.as_ref()) {
            self.say("bot-owner-only", &[]);
            return Ok(());
        }
        let mut lines = Vec::new();
        for person in self.sheet.people()? {
            let linked = if Card::of_person(self.sheet, &person.id)?.is_some() { "yes" } else { "no" };
            let role = self.role(self.language, person.role);
            let id = person.id.as_str();
            let values = [("id", id), ("name", person.name.as_str()), ("role", &role), ("linked", linked)];
            lines.push(self.phrase("bot-person-line", &values));
        }
        self.text_out(&lines.join("\n"), Vec::new(), None);
        Ok(())
    }

    fn remove(&mut self, id: &str) -> Result<(), StoreError> {
        if !may_manage(self.person.as_ref()) {
            self.say("bot-owner-only", &[]);
            return Ok(());
        }
        let own = self.person.as_ref().map(|person| person.id.clone());
        match self.known(id)?.filter(|person| Some(&person.id) != own.as_ref()) {
            Some(person) => {
                self.remove_all_of(&person)?;
                self.say("bot-person-removed", &[("name", &person.name)]);
                Ok(())
            }
            None => self.person_unknown(id),
        }
    }

    fn choose_language(&mut self, tag: &str) -> Result<(), StoreError> {
        let Some(mut person) = self.person.clone() else {
            self.say("bot-not-linked", &[]);
            return Ok(());
        };
        let (speaks, language) = match tag.to_lowercase().as_str() {
            "en" => (Speaks::English, Language::En),
            "hi" => (Speaks::Hindi, Language::Hi),
            "hi-latn" => (Speaks::RomanisedHindi, Language::HiLatn),
            _ => {
                self.say("bot-language-usage", &[]);
                return Ok(());
            }
        };
        person.speaks = Some(speaks);
        self.language = language;
        self.sheet.write(vec![Change::put(person.clone())])?;
        self.person = Some(person);
        self.say("bot-language-set", &[]);
        self.send_menu();
        Ok(())
    }

    /// What waits and this person may answer.
    fn list_questions(&mut self) -> Result<(), StoreError> {
        if !may_see_questions(self.person.as_ref()) {
            self.say("bot-crew-only", &[]);
            return Ok(());
        }
        let mut lines = Vec::new();
        for waiting in super::sweep::waiting(self.sheet)? {
            if crate::garden::rights::may_answer(self.person.as_ref(), &waiting.sites) {
                let name = self.name_of(waiting.asker.as_ref(), self.language);
                let day = waiting.question.asked_at.with_timezone(self.now.offset()).format("%Y-%m-%d").to_string();
                let text = waiting.question.text.as_str();
                lines.push(self.phrase("bot-question-line", &[("day", &day), ("name", &name), ("text", text)]));
            }
        }
        if lines.is_empty() {
            self.say("bot-questions-none", &[]);
            return Ok(());
        }
        self.text_out(&lines.join("\n\n"), Vec::new(), None);
        Ok(())
    }
}
