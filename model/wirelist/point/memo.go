package point

// Memo keeps what points say, by their texts: the same lines are asked in several ways before one of them is taken.
type Memo map[string]Parts

// Of is PartsOf of a text, asked once.
func (m *Memo) Of(text string) Parts {
	p, ok := (*m)[text]
	if !ok {
		if *m == nil {
			*m = Memo{}
		}
		p = PartsOf(text)
		(*m)[text] = p
	}
	return p
}
