package pieces

// settleBare takes the numbers without a unit beside the colours for sizes, where most lines with a colour have one; else they are
// kept as remarks.
func (all lines) settleBare() {
	for l := range all.each {
		switch {
		case l.bare == "":
		case l.size == "" && 2*all.bare >= all.coloured:
			l.size = l.bare
		default:
			l.notes = append(l.notes, l.bare)
		}
	}
}

// settleCodes takes the letters that stand alone for colours, where most lines have a colour or such letters; else they name the wire.
func (all lines) settleCodes() {
	coloured, coded := 0, 0
	for l := range all.each {
		if l.colour != "" {
			coloured++
		} else if l.code != "" {
			coded++
		}
	}
	for l := range all.each {
		switch {
		case l.code == "":
		case l.colour == "" && 4*(coloured+coded) >= 3*all.n:
			l.colour = l.code
		default:
			l.called(l.code)
		}
	}
}

// settleAsides takes what stands in brackets for the far end, where most lines that begin with a cavity have one word or two of it and
// tell no far end otherwise; else it is a remark.
func (all lines) settleAsides() {
	used, places := 0, 0
	for l := range all.each {
		if l.pin != "" && !l.free() {
			used++
		}
		if l.hasPlace() {
			places++
		}
	}
	for l := range all.each {
		if places >= least && 4*places >= 3*used && l.hasPlace() {
			l.ends, l.asides = l.asides, nil
		}
		l.notes = append(l.notes, l.asides...)
	}
}

// hasPlace reports whether a line begins with a cavity and can have its far end in brackets.
func (l *line) hasPlace() bool {
	return l.pin != "" && !l.free() && len(l.asides) == 1 && len(l.ends) == 0 && isPlace(l.asides[0])
}
