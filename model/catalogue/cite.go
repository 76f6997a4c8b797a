package catalogue

import (
	"strings"
)

// mostCites is how deep sources may refer to sources. What is left then stays as it is written:
// two that refer to each other end here.
const mostCites = 4

// cite puts, in every entry, what a source says in the place of its id in braces, so that a
// source stands once in a file and a person reads it in full: "resistance {ac-11-9}" becomes
// "resistance AC 43.13-1B CHG 1, table 11-9, p. 11-23". An id that no source has stays as it is
// written. The maps and lists of the catalogue are changed: call it on fresh ones.
func (c *Catalogue) cite() {
	c.Wires = cited(c, c.Wires, func(e *Wire) []*string { return []*string{&e.Source} })
	c.Boots = cited(c, c.Boots, func(e *Boot) []*string { return []*string{&e.Source} })
	c.Transitions = cited(c, c.Transitions, func(e *Transition) []*string { return []*string{&e.Source} })
	c.Contacts = cited(c, c.Contacts, func(e *Contact) []*string { return []*string{&e.Source} })
	c.Inserts = cited(c, c.Inserts, func(e *Insert) []*string { return []*string{&e.Source, &e.NamesSource} })
	c.Faces = cited(c, c.Faces, func(e *Face) []*string { return []*string{&e.Source} })
	c.Splices = cited(c, c.Splices, func(e *Splice) []*string { return []*string{&e.Source} })
	for k := range c.Tubes {
		c.Tubes[k].Source = c.cites(c.Tubes[k].Source)
	}
}

// cited is a map of entries, the texts of each with what their sources say.
func cited[K comparable, V any](c *Catalogue, m map[K]V, texts func(*V) []*string) map[K]V {
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
	for range mostCites {
		if !strings.Contains(text, "{") {
			return text
		}
		var b strings.Builder
		for rest := text; rest != ""; {
			before, after, open := strings.Cut(rest, "{")
			id, behind, closed := strings.Cut(after, "}")
			s, known := c.Sources[id]
			b.WriteString(before)
			switch {
			case !open:
				rest = ""
			case closed && known:
				b.WriteString(s.inWords())
				rest = behind
			default:
				b.WriteByte('{')
				rest = after
			}
		}
		if b.String() == text {
			break
		}
		text = b.String()
	}
	return text
}

// inWords is a source as it stands inside a sentence.
func (s Source) inWords() string {
	if s.Place == "" {
		return s.Document
	}
	return s.Document + ", " + s.Place
}
