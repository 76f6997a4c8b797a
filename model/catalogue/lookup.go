package catalogue

import (
	"cmp"
	"maps"
	"slices"
)

// Wire returns the entry of a specification and size. The size may be spelt in
// any way CanonicalSize reads.
func (c *Catalogue) Wire(spec, size string) (Wire, bool) {
	w, ok := c.Wires[WireKey{spec, CanonicalSize(size)}]
	return w, ok
}

// Specs lists the wire specifications, each once, in order of name.
func (c *Catalogue) Specs() []string {
	seen := map[string]bool{}
	for k := range c.Wires {
		seen[k.Spec] = true
	}
	return sortedNames(seen)
}

// Sizes lists the sizes of a specification, thin to thick by copper.
func (c *Catalogue) Sizes(spec string) []string {
	var ws []Wire
	for k, w := range c.Wires {
		if k.Spec == spec {
			ws = append(ws, w)
		}
	}
	slices.SortFunc(ws, func(a, b Wire) int {
		return cmp.Or(cmp.Compare(a.AreaMM2, b.AreaMM2), compareNames(a.Size, b.Size))
	})
	sizes := make([]string, len(ws))
	for i, w := range ws {
		sizes[i] = w.Size
	}
	return sizes
}

// Tube returns the entry of an id.
func (c *Catalogue) Tube(id string) (Tube, bool) {
	for _, t := range c.Tubes {
		if t.ID == id {
			return t, true
		}
	}
	return Tube{}, false
}

// TubesOf lists the tubes of a kind, small bore to large.
func (c *Catalogue) TubesOf(kind string) []Tube {
	var ts []Tube
	for _, t := range c.Tubes {
		if t.Kind == kind {
			ts = append(ts, t)
		}
	}
	return ts
}

// Kinds lists the kinds of tube, each once, in order of name.
func (c *Catalogue) Kinds() []string {
	var ks []string
	for _, t := range c.Tubes { // in order of kind already
		if len(ks) == 0 || ks[len(ks)-1] != t.Kind {
			ks = append(ks, t.Kind)
		}
	}
	return ks
}

// Boot returns the entry of an id.
func (c *Catalogue) Boot(id string) (Boot, bool) { b, ok := c.Boots[id]; return b, ok }

// BootIDs lists the boots in order of name.
func (c *Catalogue) BootIDs() []string { return sortedNames(c.Boots) }

// Transition returns the entry of an id.
func (c *Catalogue) Transition(id string) (Transition, bool) {
	t, ok := c.Transitions[id]
	return t, ok
}

// TransitionIDs lists the transitions in order of name.
func (c *Catalogue) TransitionIDs() []string { return sortedNames(c.Transitions) }

// Contact returns the entry of a contact size, as printed: "22D", "20".
func (c *Catalogue) Contact(size string) (Contact, bool) { k, ok := c.Contacts[size]; return k, ok }

// ContactSizes lists the contact sizes, small to large by the current they carry.
func (c *Catalogue) ContactSizes() []string {
	sizes := sortedNames(c.Contacts)
	slices.SortStableFunc(sizes, func(a, b string) int {
		return cmp.Compare(c.Contacts[a].MaxA, c.Contacts[b].MaxA)
	})
	return sizes
}

// Insert returns an arrangement by any of its names: "18-32" and "19-32" are one.
func (c *Catalogue) Insert(name string) (Insert, bool) { i, ok := c.Inserts[name]; return i, ok }

// InsertIDs lists the arrangements by their first name, each once, in order.
func (c *Catalogue) InsertIDs() []string {
	ids := map[string]bool{}
	for _, i := range c.Inserts {
		ids[i.ID] = true
	}
	return sortedNames(ids)
}

// Splice returns the entry of an id.
func (c *Catalogue) Splice(id string) (Splice, bool) { s, ok := c.Splices[id]; return s, ok }

// SpliceIDs lists the splices in order of name.
func (c *Catalogue) SpliceIDs() []string { return sortedNames(c.Splices) }

func sortedNames[V any](m map[string]V) []string {
	return slices.SortedFunc(maps.Keys(m), compareNames)
}
