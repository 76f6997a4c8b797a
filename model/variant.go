package model

// Letter is what a variant of a branch stands under: "A" to "Z".
type Letter string

// Letters are all letters, in their order.
func Letters() []Letter {
	out := make([]Letter, 0, 'Z'-'A'+1)
	for c := 'A'; c <= 'Z'; c++ {
		out = append(out, Letter(c))
	}
	return out
}

// AsideLetters is the letter under which each variant of a branch is shown: its own, else the next
// that no other has. Of two that have the same, the first keeps it. A variant past the last letter
// has none: "".
func (b *Branch) AsideLetters() []Letter {
	out, taken := make([]Letter, len(b.Asides)), map[Letter]bool{}
	for k := range b.Asides {
		if l := b.Asides[k].Letter; l.Set && !taken[l.V] {
			out[k], taken[l.V] = l.V, true
		}
	}
	free := Letters()
	for k := range out {
		for out[k] == "" && len(free) > 0 {
			if !taken[free[0]] {
				out[k] = free[0]
			}
			free = free[1:]
		}
	}
	return out
}

// FreeLetter is the letter that the next variant of a branch gets; none where all are taken.
func (b *Branch) FreeLetter() Opt[Letter] {
	taken := map[Letter]bool{}
	for _, l := range b.AsideLetters() {
		taken[l] = true
	}
	for _, l := range Letters() {
		if !taken[l] {
			return Some(l)
		}
	}
	return Opt[Letter]{}
}
