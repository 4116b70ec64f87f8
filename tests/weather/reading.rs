//! Both services: how they are asked, what is read of them, what is refused.

use crate::weather_service::documents::{celsius, met_norway as compact, open_meteo as arrays, stamp};
use crate::weather_service::{Reply, Service};
use crate::{NOW, at, nagpur};
use chrono::TimeDelta;
use rooftend::weather::Service as By;
use rooftend::weather::source::{Answered, Content, Fault, Provider, Setting, met_norway, open_meteo, providers};
use serde_json::{Value, json};

/// The only provider of a setting.
fn provider(setting: &str) -> Box<dyn Provider> {
    providers(&setting.parse::<Setting>().unwrap(), Some("crew@example.org")).unwrap().remove(0)
}

fn ask(provider: &dyn Provider, since: Option<&str>) -> Result<Answered, Fault> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(provider.ask(nagpur(), since))
}

#[test]
fn asks_as_the_terms_of_met_norway_want() {
    let modified = "Mon, 18 May 2026 01:12:13 GMT";
    let whole = Reply::document(compact(at(NOW), 60, 30).to_string());
    let whole = whole.with("Last-Modified", modified).with("Expires", "Mon, 18 May 2026 02:31:00 GMT");
    let same = Reply::status(304).with("Expires", "Mon, 18 May 2026 03:05:00 GMT");
    let service = Service::start([whole, same]);
    let provider = provider(&format!("met-norway={}", service.address()));
    let Ok(Answered::New(fetched)) = ask(provider.as_ref(), None) else { panic!("a document") };
    assert_eq!(fetched.last_modified.as_deref(), Some(modified));
    assert_eq!(fetched.expires, Some(at("2026-05-18T02:31:00Z")));
    assert_eq!(fetched.outlook.issued, Some(at(NOW)));
    assert!(!fetched.deprecated);
    let again = ask(provider.as_ref(), Some(modified));
    assert_eq!(again, Ok(Answered::Same { expires: Some(at("2026-05-18T03:05:00Z")) }));
    let asked = service.asked();
    assert_eq!(asked[0].path, "/weatherapi/locationforecast/2.0/compact?lat=21.15&lon=79.10");
    assert!(asked[0].user_agent.starts_with("rooftend/") && asked[0].user_agent.contains("crew@example.org"));
    assert_eq!((asked[0].since.as_deref(), asked[1].since.as_deref()), (None, Some(modified)));
}

#[test]
fn asks_open_meteo_in_units_of_the_sums() {
    let service = Service::start([Reply::document(arrays(at(NOW), 9).to_string())]);
    let provider = provider(&format!("open-meteo={}/", service.address()));
    assert!(matches!(ask(provider.as_ref(), None), Ok(Answered::New(_))));
    let path = &service.asked()[0].path;
    for part in ["/v1/forecast?latitude=21.15&longitude=79.10&", "wind_speed_unit=ms", "timezone=GMT"] {
        assert!(path.contains(part), "{path}");
    }
}

#[track_caller]
fn fault(reply: Reply, expected: &str) {
    let service = Service::start([reply]);
    for name in ["met-norway", "open-meteo"] {
        let told = ask(provider(&format!("{name}={}", service.address())).as_ref(), None).unwrap_err().to_string();
        assert_eq!(told, expected.replace("SERVICE", name));
    }
}

#[test]
fn faults_of_the_way() {
    fault(Reply::status(429).with("Retry-After", "600"), "SERVICE asks to be left alone for a while (429)");
    fault(Reply::status(403), "SERVICE refused with status 403");
    fault(Reply::status(301).with("Location", "http://127.0.0.1:9/"), "SERVICE refused with status 301");
    fault(Reply::status(502), "SERVICE is out of order: status 502");
    fault(Reply::Dead, "SERVICE cannot be reached: the connection broke off");
    fault(Reply::Broken, "SERVICE cannot be reached: the connection broke off");
    fault(Reply::document("<html>".to_owned()), "SERVICE: line 1, column 1: expected value");
    let nobody = provider("met-norway=http://127.0.0.1:9");
    assert_eq!(ask(nobody.as_ref(), None).unwrap_err().to_string(), "met-norway cannot be reached: no connection");
    let busy = Service::start([Reply::status(429).with("Retry-After", "600")]);
    let told = ask(provider(&format!("met-norway={}", busy.address())).as_ref(), None).unwrap_err();
    assert_eq!(told, Fault::Busy { service: By::MetNorway, wait: Some(TimeDelta::seconds(600)) });
}

#[test]
fn a_product_that_ends_is_told() {
    let document = Reply::Whole(203, Vec::new(), compact(at(NOW), 60, 4).to_string());
    let service = Service::start([document]);
    let Ok(Answered::New(fetched)) = ask(provider(&format!("met-norway={}", service.address())).as_ref(), None) else {
        panic!("a document")
    };
    assert!(fetched.deprecated);
}

#[track_caller]
fn refused_compact(spoil: impl Fn(&mut Value), expected: &str) {
    let mut document = compact(at(NOW), 24, 2);
    spoil(&mut document);
    let told = met_norway::read(&document.to_string(), nagpur()).unwrap_err().to_string();
    assert!(told.starts_with("met-norway: ") && told.contains(expected), "{told}");
}

#[test]
fn compact_documents_that_cannot_be() {
    let details = "/properties/timeseries/3/data/instant/details";
    let set =
        |path: String, value: Value| move |document: &mut Value| *document.pointer_mut(&path).unwrap() = value.clone();
    let third = "properties.timeseries[3] (2026-05-18T05:00:00+00:00)";
    refused_compact(
        set(format!("{details}/air_temperature"), json!(70.0)),
        &format!("{third}: air_temperature: temperature 70 °C was given, -60 to 60 °C expected"),
    );
    refused_compact(
        set(format!("{details}/relative_humidity"), json!(140.0)),
        &format!("{third}: relative_humidity 140 % was given, 0 to 100 % expected"),
    );
    let hour = "/properties/timeseries/3/data/next_1_hours/details/precipitation_amount";
    refused_compact(set(hour.to_owned(), json!(-0.2)), "precipitation_amount: depth of water -0.2 mm was given");
    refused_compact(set(format!("{details}/wind_speed"), json!(99.0)), "wind_speed: wind speed 99 m/s was given");
    refused_compact(set(format!("{details}/air_temperature"), json!("warm")), "invalid type: string");
    let unit = "/properties/meta/units/wind_speed";
    refused_compact(
        set(unit.to_owned(), json!("knots")),
        "properties.meta.units.wind_speed: the unit \"knots\" was given, \"m/s\" expected",
    );
    refused_compact(set("/geometry/coordinates".to_owned(), json!([10.7, 59.9])), "it is for a place 6");
    let second = "/properties/timeseries/4/time";
    refused_compact(set(second.to_owned(), json!(NOW)), "times in their order expected");
    refused_compact(set("/properties/timeseries".to_owned(), json!([])), "at least one expected");
    let cut = &compact(at(NOW), 24, 2).to_string()[..900];
    let told = met_norway::read(cut, nagpur()).unwrap_err().to_string();
    assert_eq!(told, "met-norway: line 1, column 900: the document is cut short");
}

#[track_caller]
fn refused_arrays(path: &str, value: Value, expected: &str) {
    let mut document = arrays(at(NOW), 4);
    *document.pointer_mut(path).unwrap() = value;
    let told = open_meteo::read(&document.to_string(), nagpur()).unwrap_err().to_string();
    assert!(told.starts_with("open-meteo: ") && told.contains(expected), "{told}");
}

#[test]
fn arrays_that_cannot_be() {
    refused_arrays("/hourly/temperature_2m/5", json!(70), "hourly[5] (2026-05-16T05:00:00+00:00): temperature_2m: ");
    refused_arrays("/hourly/relative_humidity_2m/5", json!(140), "relative_humidity_2m 140 % was given");
    refused_arrays("/hourly/precipitation/5", json!(-1), "precipitation: depth of water -1 mm was given");
    refused_arrays("/hourly/shortwave_radiation/5", json!(2000), "shortwave_radiation: radiation 2000 W/m2 was given");
    refused_arrays("/hourly/time/5", json!("soon"), "hourly.time[5]: \"soon\" is no time");
    refused_arrays("/hourly/precipitation", json!([0.0]), "hourly.precipitation: 1 values were given for 96 times");
    refused_arrays("/hourly/temperature_2m", json!({}), "invalid type: map");
    refused_arrays("/hourly_units/temperature_2m", json!("°F"), "the unit \"°F\" was given, \"°C\" expected");
    refused_arrays("/hourly_units/precipitation", json!("inch"), "the unit \"inch\" was given, \"mm\" expected");
    refused_arrays("/latitude", json!(52.5), "it is for a place");
    let cut = &arrays(at(NOW), 4).to_string()[..900];
    let told = open_meteo::read(cut, nagpur()).unwrap_err().to_string();
    assert_eq!(told, "open-meteo: line 1, column 900: the document is cut short");
    // What is not known of an hour is left out.
    let mut document = arrays(at(NOW), 4);
    document["hourly"]["temperature_2m"][5] = Value::Null;
    let Content::Steps(steps) = open_meteo::read(&document.to_string(), nagpur()).unwrap().content else {
        panic!("steps")
    };
    assert_eq!(steps.len(), 95);
}

/// FAO-56 eq. 47 and example 14: 3.2 m/s at 10 m are 2.4 m/s at 2 m (the factor 4.87 / ln(67.8·10 − 5.42) is 0.748).
#[test]
fn wind_of_ten_metres_is_brought_to_two() {
    let mut document = compact(at(NOW), 24, 0);
    document["properties"]["timeseries"][0]["data"]["instant"]["details"]["wind_speed"] = json!(3.2);
    let wind = |content| match content {
        Content::Steps(steps) => steps.first().unwrap().wind_2m.unwrap().as_metres_per_second(),
        Content::Days(_) => panic!("steps"),
    };
    let got = wind(met_norway::read(&document.to_string(), nagpur()).unwrap().content);
    assert!((got - 2.4).abs() < 0.05, "{got}");
    let mut document = arrays(at(NOW), 3);
    document["hourly_units"]["wind_speed_10m"] = json!("km/h");
    document["hourly"]["wind_speed_10m"][0] = json!(3.2 * 3.6);
    let got = wind(open_meteo::read(&document.to_string(), nagpur()).unwrap().content);
    assert!((got - 2.4).abs() < 0.05, "{got}");
}

/// The documents' own shape: a moment's value is what was put in.
#[test]
fn the_documents_are_what_they_seem() {
    assert!((celsius(at("2026-05-18T09:30:00Z")) - 43.0).abs() < 1e-9);
    assert_eq!(stamp(at(NOW)), "2026-05-18T02:00:00Z");
}
