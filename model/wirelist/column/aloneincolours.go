package column

// AloneInColours reports whether the cells of a column are colours, and those of no other column are.
func AloneInColours(prof []Profile, i int) bool {
	for k := range prof {
		if k != i && prof[k].Most(prof[k].Colours) {
			return false
		}
	}
	return prof[i].Coloured()
}
