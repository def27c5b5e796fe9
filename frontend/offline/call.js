// What /call does beyond plain HTML. Without it the page shows everything all the same.

const main = document.getElementById('main');
const TOPIC = 'hearthway-topic';

// The page may come from the phone's own copy, days old: the office line is told anew by this phone's clock.
function tellOffice() {
  const now = Date.now();
  const opening = [...document.querySelectorAll('[data-openings] > li')].find((li) => Date.parse(li.dataset.until) > now);
  if (!opening) return;
  const [open, before] = opening.children;
  const words = (Date.parse(opening.dataset.from) <= now ? open : before).textContent;
  document.querySelectorAll('[data-office]').forEach((place) => {
    if (place.textContent !== words) place.textContent = words;
  });
}

// The topic that was looked at last is chosen again: most families need the same one each time.
function chooseTopic() {
  const asked = location.hash.slice(1) || localStorage.getItem(TOPIC) || 'all';
  const choice = [...document.getElementsByName('topic')].find((radio) => radio.value === asked);
  if (choice) choice.checked = true;
}

function rememberTopic(event) {
  if (event.target.name === 'topic') localStorage.setItem(TOPIC, event.target.value);
}

function tellWhetherSaved() {
  document.querySelector('[data-saved]').hidden = navigator.onLine;
}

tellOffice();
setInterval(tellOffice, 60_000);
document.addEventListener('visibilitychange', tellOffice);

chooseTopic();
addEventListener('hashchange', chooseTopic);
main.addEventListener('change', rememberTopic);

tellWhetherSaved();
addEventListener('online', tellWhetherSaved);
addEventListener('offline', tellWhetherSaved);

const print = document.querySelector('[data-print]');
print.hidden = false;
print.addEventListener('click', () => window.print());

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/call/worker.js?v=' + main.dataset.version, { scope: '/call' }).catch(() => {
    // a browser that keeps nothing, as in a private window: the page works as long as there is a network
  });
}
