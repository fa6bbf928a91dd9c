// Runs before the first paint, so that a page chosen dark never flashes white.
(function () {
  try {
    var choice = localStorage.getItem('standstill.theme');
    if (choice === 'light' || choice === 'dark') document.documentElement.dataset.theme = choice;
  } catch {
    // Storage is blocked: the system's choice stands.
  }
})();
