package schema

import (
	"unicode/utf8"

	"contralay/model"
)

// Sound reports whether Read finds nothing wrong with a harness once Text has written it: every value is one that its key takes,
// each key that must be there is, and the model finds nothing. It asks the schema, key by key, and writes and reads no text: of a
// harness of 20,000 wires that is less than a tenth of the work. It may say no of a harness that could be read, of one with a text
// that is no UTF-8; it never says yes of one that could not.
func Sound(h *model.Harness) bool {
	var scratch model.Harness
	return whole.sound(h, &scratch) && len(h.Check()) == 0
}

// sound reports whether each value of v is one that can be read; scratch is what they are read into.
func (t table[T]) sound(v, scratch *T) bool {
	for i := range t.keys {
		k := &t.keys[i]
		switch raw := k.raw(v); {
		case raw == nil && k.must, raw != nil && (!isUTF8(raw) || k.put(scratch, raw) != ""):
			return false
		}
	}
	for _, p := range t.parts {
		if !p.sound(v) {
			return false
		}
	}
	return true
}

func (o one[T, S]) sound(v *T) bool {
	var scratch S
	return o.inside.sound(o.at(v), &scratch)
}

func (m many[T, S]) sound(v *T) bool {
	var scratch S
	all := *m.at(v)
	for i := range all {
		if !m.inside.sound(&all[i], &scratch) {
			return false
		}
	}
	return true
}

// isUTF8 reports whether every text in a decoded value is UTF-8. Text writes another character for what is none, and two ids could
// then be one.
func isUTF8(raw any) bool {
	switch v := raw.(type) {
	case string:
		return utf8.ValidString(v)
	case []any:
		for _, one := range v {
			if !isUTF8(one) {
				return false
			}
		}
	case map[string]any:
		for key, one := range v {
			if !utf8.ValidString(key) || !isUTF8(one) {
				return false
			}
		}
	}
	return true
}
