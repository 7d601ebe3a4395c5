// Runs before the first paint and before the page's own scripts. A file, not an inline script: the
// page's policy forbids those.
try {
	const theme = localStorage.getItem('holding-window.theme');
	if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch {
	// Storage is blocked: the system's theme applies.
}
// What is typed, ticked or chosen before the page's own scripts run is remembered; they take it up.
globalThis.earlyInput = new Map();
globalThis.rememberEarly = ({ target }) =>
	globalThis.earlyInput.set(target, { value: target.value, checked: target.checked });
addEventListener('input', globalThis.rememberEarly, true);
