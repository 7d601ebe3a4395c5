export const fingerWord = (count: number) => (count === 1 ? '1 finger' : `${count} fingers`);
export const handWord = (count: number) => (count === 1 ? 'one hand' : 'two hands');
