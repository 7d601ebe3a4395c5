/**
 * Triangular square root of a symmetric matrix.
 *
 * A = L Lᵀ with L lower triangular.
 *
 * @param matrix symmetric, row by row, any unit
 * @returns L, or undefined when the matrix is not positive definite
 * Source: golubVanLoan2013, algorithm 4.2.1
 * Example: cholesky([[4]]) → [[2]]
 */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] | undefined {
	const size = matrix.length;
	const root = Array.from({ length: size }, () => new Array<number>(size).fill(0));
	for (let i = 0; i < size; i += 1) {
		for (let j = 0; j <= i; j += 1) {
			let rest = matrix[i]![j]!;
			for (let k = 0; k < j; k += 1) rest -= root[i]![k]! * root[j]![k]!;
			if (i !== j) root[i]![j] = rest / root[j]![j]!;
			else if (!(rest > 1e-13 * Math.abs(matrix[i]![i]!)) || !Number.isFinite(rest))
				return undefined;
			else root[i]![i] = Math.sqrt(rest);
		}
	}
	return root;
}

/**
 * Solves A x = b for a symmetric positive definite A given by its triangular root.
 *
 * @param root L from cholesky
 * @param right b
 * @returns x
 * Source: golubVanLoan2013, algorithms 3.1.1 and 3.1.2
 * Example: solveWith([[2]], [8]) → [2]
 */
export function solveWith(root: readonly number[][], right: readonly number[]): number[] {
	const x = [...right];
	for (let i = 0; i < x.length; i += 1) {
		for (let k = 0; k < i; k += 1) x[i]! -= root[i]![k]! * x[k]!;
		x[i]! /= root[i]![i]!;
	}
	for (let i = x.length - 1; i >= 0; i -= 1) {
		for (let k = i + 1; k < x.length; k += 1) x[i]! -= root[k]![i]! * x[k]!;
		x[i]! /= root[i]![i]!;
	}
	return x;
}

/**
 * Inverse of a symmetric positive definite matrix given by its triangular root.
 *
 * @param root L from cholesky
 * @returns A⁻¹, symmetric
 * Source: golubVanLoan2013, section 4.2
 * Example: inverseWith([[2]]) → [[0.25]]
 */
export function inverseWith(root: readonly number[][]): number[][] {
	const columns = root.map((_, j) =>
		solveWith(
			root as number[][],
			root.map((_, i) => (i === j ? 1 : 0))
		)
	);
	return columns.map((column, i) => column.map((value, j) => (value + columns[j]![i]!) / 2));
}

/**
 * Logarithm of the determinant of a symmetric positive definite matrix given by its triangular root.
 *
 * ln det A = 2 Σ ln L_ii.
 *
 * @param root L from cholesky
 * @returns natural logarithm
 * Source: golubVanLoan2013, section 4.2
 * Example: logDeterminantWith([[2]]) → 1.3862943611198906
 */
export function logDeterminantWith(root: readonly number[][]): number {
	return root.reduce((sum, row, i) => sum + 2 * Math.log(row[i]!), 0);
}
