// For browsers that know no modules, so that they wait for nothing. In the words of 2009.
window.onload = function () {
  var failed = document.getElementById('failed');
  var loading = document.getElementById('loading');
  var paper = document.getElementById('paper');
  document.documentElement.setAttribute('data-state', 'failed');
  document.getElementById('failed-reason').appendChild(
    document.createTextNode('This browser is too old: it knows no JavaScript modules.')
  );
  if (paper) paper.setAttribute('open', '');
  document.getElementById('failed-again').style.display = 'none';
  document.getElementById('failed-paper').style.display = 'none';
  loading.parentNode.removeChild(loading);
  failed.removeAttribute('hidden');
};
