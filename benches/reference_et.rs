//! How fast one reference evapotranspiration is.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use rooftend::agronomy::reference_et::{DayWeather, Exposure, Humidity, SiteDay, Sunlight, reference_et};
use rooftend::quantity::{Pressure, Radiation, Temperature, WindSpeed};
use std::hint::black_box;

fn one_day(criterion: &mut Criterion) {
    let weather = DayWeather {
        tmax: Temperature::celsius(42.6),
        tmin: Temperature::celsius(28.3),
        humidity: Some(Humidity::VapourPressure(Pressure::kilopascals(1.4))),
        wind_2m: Some(WindSpeed::metres_per_second(2.4)),
        sunlight: Some(Sunlight::Measured(Radiation::megajoules_per_square_metre(25.1))),
    };
    let bare = DayWeather { humidity: None, wind_2m: None, sunlight: None, ..weather };
    let site = SiteDay::new(21.15, 310.0, 138);
    let mut group = criterion.benchmark_group("reference_et");
    group.throughput(Throughput::Elements(1));
    group.bench_function("site and day known", |bencher| {
        bencher.iter(|| reference_et(black_box(&site), black_box(&weather), Exposure::OPEN).et);
    });
    group.bench_function("temperatures only", |bencher| {
        bencher.iter(|| reference_et(black_box(&site), black_box(&bare), Exposure::OPEN).et);
    });
    group.bench_function("from scratch", |bencher| {
        bencher.iter(|| {
            let site = SiteDay::new(black_box(21.15), black_box(310.0), black_box(138));
            reference_et(&site, black_box(&weather), Exposure::OPEN).et
        });
    });
    group.finish();
}

criterion_group!(benches, one_day);
criterion_main!(benches);
