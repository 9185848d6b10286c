//! Serves dist/ on this machine.

use crate::bundle;
use crate::names::is_hashed;
use crate::policy::CONTENT_SECURITY_POLICY;
use anyhow::{Context, Result};
use axum::Router;
use axum::extract::Request;
use axum::http::{HeaderName, HeaderValue, header};
use axum::middleware::{Next, from_fn};
use axum::response::Response;
use std::io::{self, ErrorKind, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener};
use std::path::Path;
use std::thread;
use tower_http::services::ServeDir;

/// The port that is tried first, and the number of those after it.
const PORT: u16 = 8080;
const PORTS: u16 = 100;

/// The folder in which the page tests find the page. It is not the top one, so that
/// a reference from the top of the server shows as a failure.
const TEST_FOLDER: &str = "/a/folder";

/// Builds the page, serves it and says where. Ends only by a failure.
pub(crate) fn build_and_serve(root: &Path) -> Result<()> {
    bundle::build(root, &[])?;
    let listener =
        next_free(PORT, PORTS, |port| TcpListener::bind((Ipv4Addr::LOCALHOST, port)))?;
    let address = listener.local_addr()?;
    println!("Noseward is at http://{address}/ (stop with Ctrl-C)");
    // Whoever reads us through a pipe waits for this line.
    io::stdout().flush()?;
    serve(listener, files(&bundle::folder(root)))
}

/// Serves dist/ on a free port as long as this program runs; gives the page's
/// address.
pub(crate) fn in_background(root: &Path) -> Result<String> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))
        .context("no free port on 127.0.0.1")?;
    let address: SocketAddr = listener.local_addr()?;
    let router = Router::new().nest_service(TEST_FOLDER, files(&bundle::folder(root)));
    thread::spawn(move || {
        if let Err(error) = serve(listener, router) {
            eprintln!("the server of the page stopped: {error:#}");
        }
    });
    Ok(format!("http://{address}{TEST_FOLDER}/"))
}

fn serve(listener: TcpListener, router: Router) -> Result<()> {
    listener.set_nonblocking(true)?;
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    runtime.block_on(async {
        let listener = tokio::net::TcpListener::from_std(listener)?;
        axum::serve(listener, router).await.context("the server stopped")
    })
}

fn files(folder: &Path) -> Router {
    Router::new().fallback_service(ServeDir::new(folder)).layer(from_fn(add_headers))
}

async fn add_headers(request: Request, next: Next) -> Response {
    let path = request.uri().path().to_owned();
    let mut response = next.run(request).await;
    if response.status().is_client_error() {
        return response;
    }
    for (name, value) in headers(&path) {
        response.headers_mut().insert(name, HeaderValue::from_static(value));
    }
    response
}

/// The headers that go with a file, beyond those of any file server.
fn headers(path: &str) -> Vec<(HeaderName, &'static str)> {
    let caching =
        if is_hashed(path) { "public, max-age=31536000, immutable" } else { "no-cache" };
    let mut headers = vec![
        (header::CONTENT_SECURITY_POLICY, CONTENT_SECURITY_POLICY),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (header::CACHE_CONTROL, caching),
        // A learning platform may show the page in a frame that counts as nobody's: its
        // scripts and the module are then asked for from elsewhere.
        (header::ACCESS_CONTROL_ALLOW_ORIGIN, "*"),
    ];
    if path.ends_with(".webmanifest") {
        headers.push((header::CONTENT_TYPE, "application/manifest+json"));
    }
    if path.ends_with(".ts") {
        // The usual tables take TypeScript for a film.
        headers.push((header::CONTENT_TYPE, "text/plain; charset=utf-8"));
    }
    headers
}

/// What `bind` makes of the first port that is free.
fn next_free<T>(
    first: u16,
    count: u16,
    bind: impl Fn(u16) -> io::Result<T>,
) -> Result<T> {
    let last = first.saturating_add(count);
    for port in first..last {
        match bind(port) {
            Ok(bound) => return Ok(bound),
            Err(error) if is_taken(&error) => {}
            Err(error) => {
                return Err(error).with_context(|| {
                    format!("port {port} of 127.0.0.1 cannot be opened")
                });
            }
        }
    }
    anyhow::bail!("every port from {first} to {} is taken; free one of them", last - 1)
}

/// Some systems refuse a port that another program reserved, rather than calling it
/// taken.
fn is_taken(error: &io::Error) -> bool {
    matches!(error.kind(), ErrorKind::AddrInUse | ErrorKind::PermissionDenied)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_free_port_is_taken() {
        let bind = |port| match port {
            8080 => Err(ErrorKind::AddrInUse.into()),
            8081 => Err(ErrorKind::PermissionDenied.into()),
            _ => Ok(port),
        };
        assert_eq!(next_free(8080, 10, bind).unwrap(), 8082);
        let error = next_free(8080, 2, bind).unwrap_err().to_string();
        assert!(error.contains("8080 to 8081"), "{error}");
    }

    #[test]
    fn another_failure_than_a_taken_port_is_told_at_once() {
        let bind = |_| Err::<(), _>(ErrorKind::AddrNotAvailable.into());
        let error = next_free(8080, 10, bind).unwrap_err().to_string();
        assert!(error.contains("8080"), "{error}");
    }

    #[test]
    fn a_port_in_use_is_passed_over() {
        let taken = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).unwrap();
        let port = taken.local_addr().unwrap().port();
        let error = TcpListener::bind((Ipv4Addr::LOCALHOST, port)).unwrap_err();
        assert!(is_taken(&error), "{error}");
    }

    fn value(path: &str, name: &HeaderName) -> Option<&'static str> {
        headers(path).into_iter().find(|(n, _)| n == name).map(|(_, value)| value)
    }

    #[test]
    fn only_hashed_names_are_kept_for_long() {
        let kept = |path| value(path, &header::CACHE_CONTROL).unwrap();
        for path in ["/", "/index.html", "/sw.js", "/noseward.html", "/noseward.d.ts"] {
            assert_eq!(kept(path), "no-cache", "{path}");
        }
        assert!(kept("/noseward-0123456789abcdef.wasm").contains("immutable"));
    }

    #[test]
    fn every_file_goes_out_with_the_policy_and_for_every_frame() {
        for path in ["/", "/noseward-0123456789abcdef.wasm"] {
            let allowed = value(path, &header::ACCESS_CONTROL_ALLOW_ORIGIN);
            assert_eq!(allowed, Some("*"));
            let policy = value(path, &header::CONTENT_SECURITY_POLICY);
            assert_eq!(policy, Some(CONTENT_SECURITY_POLICY));
            let sniffing = value(path, &header::X_CONTENT_TYPE_OPTIONS);
            assert_eq!(sniffing, Some("nosniff"));
        }
    }

    #[test]
    fn types_go_out_as_text_and_the_manifest_as_one() {
        let kind = |path| value(path, &header::CONTENT_TYPE);
        assert_eq!(kind("/noseward.d.ts"), Some("text/plain; charset=utf-8"));
        let manifest = kind("/noseward-0123456789abcdef.webmanifest");
        assert_eq!(manifest, Some("application/manifest+json"));
        assert_eq!(kind("/index.html"), None);
    }
}
