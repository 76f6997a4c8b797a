package catalogue

import "contralay/model/catalogue/cited"

// cite puts, in every entry, what a source says in the place of its id in braces, so that a
// source stands once in a file and a person reads it in full: "resistance {ac-11-9}" becomes
// "resistance AC 43.13-1B CHG 1, table 11-9, p. 11-23". An id that no source has stays as it is
// written. The maps and lists of the catalogue are changed: call it on fresh ones.
func (c *Catalogue) cite() {
	c.Wires = citedIn(c, c.Wires, func(e *Wire) []*string { return []*string{&e.Source} })
	c.Boots = citedIn(c, c.Boots, func(e *Boot) []*string { return []*string{&e.Source} })
	c.Transitions = citedIn(c, c.Transitions, func(e *Transition) []*string { return []*string{&e.Source} })
	c.Contacts = citedIn(c, c.Contacts, func(e *Contact) []*string { return []*string{&e.Source} })
	c.Inserts = citedIn(c, c.Inserts, func(e *Insert) []*string { return []*string{&e.Source, &e.NamesSource} })
	c.Faces = citedIn(c, c.Faces, func(e *Face) []*string { return []*string{&e.Source} })
	c.Splices = citedIn(c, c.Splices, func(e *Splice) []*string { return []*string{&e.Source} })
	for k := range c.Tubes {
		c.Tubes[k].Source = c.cites(c.Tubes[k].Source)
	}
}

// citedIn is a map of entries, the texts of each with what their sources say.
func citedIn[K comparable, V any](c *Catalogue, m map[K]V, texts func(*V) []*string) map[K]V {
	for k, e := range m {
		changed := false
		for _, t := range texts(&e) {
			if is := c.cites(*t); is != *t {
				*t, changed = is, true
			}
		}
		if changed {
			m[k] = e
		}
	}
	return m
}

// cites is a text with what its sources say.
func (c *Catalogue) cites(text string) string {
	return cited.In(text, func(id string) (string, bool) {
		s, known := c.Sources[id]
		return s.inWords(), known
	})
}

// inWords is a source as it stands inside a sentence.
func (s Source) inWords() string {
	if s.Place == "" {
		return s.Document
	}
	return s.Document + ", " + s.Place
}
