/** The workbook's pages beside the families. */
export const sidePages = [
	{
		path: '/workbook/published/',
		name: 'Published problems',
		holds: 'printed answers beside ours, and where a printed one is rounded or wrong'
	},
	{
		path: '/workbook/practice/',
		name: 'Practice',
		holds: 'new problems with hints in steps, shareable and printable'
	},
	{
		path: '/workbook/misconceptions/',
		name: 'Misconceptions',
		holds: 'documented wrong ideas, each with a case to try'
	},
	{
		path: '/workbook/tables/',
		name: 'Tables and standards',
		holds: 'coefficients with their sources and their spread; what each standard measures'
	},
	{
		path: '/workbook/bench/',
		name: 'Bench data',
		holds: 'fit friction laws to your own pairs of forces or tilt angles'
	}
] as const;
