// Loads the page's module and says so when that fails.
import init, { start } from './noseward.js';

try {
  await init();
  start();
} catch (error) {
  console.error(error);
  document.documentElement.dataset.state = 'failed';
  const message = document.createElement('p');
  message.className = 'sheet__message';
  message.setAttribute('role', 'alert');
  message.textContent =
    'The drawing could not start. Load the page again. If that does not help, this ' +
    'browser may be too old or may block WebAssembly: try another browser. Your rocket ' +
    'is still in the address bar: copy the address to keep it.';
  document.getElementById('sheet').replaceChildren(message);
}
