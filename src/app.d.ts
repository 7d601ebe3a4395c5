// See https://svelte.dev/docs/kit/types#app
declare global {
	namespace App {}
}

export {};
