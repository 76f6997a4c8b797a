package draw

// writeLabels writes the cores, their prefixes and the brackets. Every label has
// a blank cell on both sides; two labels may share one, and then the mark that
// is written first keeps it. The order makes sure that each selected and each
// neighbour keeps at least one of its two brackets.
func writeLabels(c *Canvas, b *board, s Section, core []string, p Palette) {
	order := b.reading()
	for _, i := range order {
		writeCore(c, b, &b.spots[i], s, core, p)
	}
	for _, i := range order {
		if b.spots[i].selected {
			b.claim(c, i, '[', true)
			b.claim(c, i, ']', false)
		}
	}
	// A row of neighbours with one blank between them: each takes its left cell
	// unless the one before has it, so the last left of a selected keeps its own.
	for _, i := range order {
		if n := b.spots[i]; n.neighbour && !n.selected && !b.claim(c, i, '(', true) {
			b.claim(c, i, ')', false)
		}
	}
	for _, i := range order {
		if n := b.spots[i]; n.neighbour && !n.selected {
			b.claim(c, i, '(', true)
			b.claim(c, i, ')', false)
		}
	}
}

// claim writes a bracket on one side of a label if nobody has that cell.
func (b *board) claim(c *Canvas, i int, r rune, left bool) bool {
	s := b.spots[i]
	col, own := s.to()+1, s.to()
	if left {
		col, own = s.from()-1, s.from()
	}
	at := s.row*b.w + col
	if b.owner[at] != 0 {
		return false
	}
	b.owner[at] = int32(i + 1)
	c.put(col, s.row, r, c.Cells[s.row*c.W+own].Style)
	return true
}

// writeCore writes one label and blanks the boundary beside it.
func writeCore(c *Canvas, b *board, t *spot, s Section, core []string, p Palette) {
	d := s.Discs[t.disc]
	style := t.style(d)
	if !t.selected && !t.flagged && !t.group && !s.ByClass && d.Code != "" {
		style = insulated(d.Code, t.neighbour, p)
	}
	text := d.prefix() + core[t.disc]
	if t.group {
		text = t.plus()
		b.clearGroup(t, len(text))
	}
	for _, col := range [2]int{t.from() - 1, t.to() + 1} {
		blankDot(c, col, t.row)
	}
	if !p.Colour {
		style = 0
	}
	c.write(t.from(), t.row, text, style)
}

// insulated is the look of a label in the base colour of a wire's insulation; plain where the
// colour is no code of digits.
func insulated(code string, heavy bool, p Palette) Style {
	ground, ok := Insulation(code[0], p.Depth())
	if !ok {
		return MakeStyle(InkNone, InkNone, heavy)
	}
	text := TextOn(ground.As(p.Depth()))
	return Exact(&text, &ground, heavy)
}

// plus is what stands for labels that are not shown.
func (s spot) plus() string {
	switch {
	case s.flagged && s.n > 1:
		return "!+"
	case s.flagged:
		return "!"
	}
	return "+"
}

// clearGroup shrinks a group to the cells its text fills.
func (b *board) clearGroup(t *spot, n int) {
	for t.n > n {
		b.owner[t.row*b.w+t.col] = 0
		t.col++
		t.n--
	}
}

// style is the look of a label.
func (s spot) style(d Disc) Style {
	switch {
	case s.selected:
		return MakeStyle(InkOnGround, InkSelected, true)
	case s.flagged:
		return MakeStyle(InkOnGround, InkFlag, true)
	case s.group:
		return MakeStyle(InkNone, InkNone, true)
	}
	return MakeStyle(InkOnGround, InkClass+Ink(d.class()), s.neighbour)
}
