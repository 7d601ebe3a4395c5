// Sets the chosen theme before first paint. A file, not an inline script: the page's policy forbids those.
try {
	const theme = localStorage.getItem('holding-window.theme');
	if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch {
	// Storage is blocked: the system's theme applies.
}
