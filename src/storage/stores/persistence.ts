/** What the browser says about keeping this site’s data. Bytes; null where it does not say. */
export type Keeping = { persistent: boolean | null; used: number | null; quota: number | null };

type Manager = Pick<StorageManager, 'persisted' | 'persist' | 'estimate'>;

/** Asks the browser not to clear the notebook when room gets short; null: it cannot be asked. */
export async function askToKeep(
	manager: Partial<Manager> | undefined = globalThis.navigator?.storage
): Promise<boolean | null> {
	if (!manager?.persist) return null;
	try {
		return (await manager.persisted?.()) || (await manager.persist());
	} catch {
		return null;
	}
}

/** Whether the notebook is safe from clearing, and how much room there is. */
export async function keeping(
	manager: Partial<Manager> | undefined = globalThis.navigator?.storage
): Promise<Keeping> {
	const [persistent, estimate] = await Promise.all([
		manager?.persisted?.().catch(() => null) ?? null,
		manager?.estimate?.().catch(() => null) ?? null
	]);
	return { persistent, used: estimate?.usage ?? null, quota: estimate?.quota ?? null };
}
