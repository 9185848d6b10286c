// Speaks where boot.js does not run: it did not arrive, was blocked, or the browser is too
// old for it. Waits for nothing, and nothing waits for it. In the words of 2009.
(function () {
  var root = document.documentElement;

  function element(id) {
    return document.getElementById(id);
  }

  // The browser may have kept a spoilt file for its next visit, so each is asked for anew.
  // The address keeps its rocket.
  function again() {
    var loading = [];
    var files = document.querySelectorAll('head [href], head [src]');
    function reload() {
      location.reload();
    }
    function whole(response) {
      return response.blob();
    }
    function nothing() {}
    if (!window.fetch || !window.Promise) return reload();
    for (var i = 0; i < files.length; i += 1) {
      loading.push(fetch(files[i].href || files[i].src, { cache: 'reload' }).then(whole, nothing));
    }
    setTimeout(reload, 4000);
    Promise.all(loading).then(reload, reload);
  }

  document.addEventListener('click', function (event) {
    var paper = element('paper');
    if (event.target.id === 'failed-again') {
      event.preventDefault();
      again();
    }
    // No link: its address would take the place of the rocket's.
    if (event.target.id === 'failed-paper') {
      paper.setAttribute('open', '');
      paper.scrollIntoView();
    }
  });

  function show() {
    // The drawing may be quicker, and takes its place.
    if (!element('failed')) return;
    element('failed-paper').hidden = false;
    element('failed-frame').hidden = window === window.parent;
    element('failed-tab').href = location.href;
    element('failed-address').value = location.href;
    element('failed-copy').hidden = false;
  }
  if (document.readyState === 'loading') {
    document.addEventListener('DOMContentLoaded', show);
  } else {
    show();
  }

  window.addEventListener('load', function () {
    if (root.getAttribute('data-boot')) return;
    var knowsModules = 'noModule' in document.createElement('script');
    element(knowsModules ? 'failed-blocked' : 'failed-old').hidden = false;
    root.setAttribute('data-state', 'failed');
  });
})();
