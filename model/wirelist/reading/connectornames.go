package reading

// namesConnectors reports whether the cells of a column are designators that come again, one after the other.
func (l *look) namesConnectors(i int) bool {
	p := &l.Prof[i]
	return p.Filled > 2 && 2*p.Distinct <= p.Filled && l.Designators(i) == p.Filled
}
