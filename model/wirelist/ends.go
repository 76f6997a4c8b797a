package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// ends turns the names of far and near ends into terminations, cavities and splices,
// now that every list is read.
func (im *importer) ends() {
	bare, pinned := map[string]int{}, map[string]bool{}
	each := func(f func(it *item, e *end)) {
		for _, it := range im.items {
			f(it, &it.from)
			f(it, &it.to)
		}
	}
	each(func(_ *item, e *end) {
		switch k := key(e.text); {
		case e.term != nil || e.text == "":
		case e.pin == "":
			bare[k]++
		default:
			pinned[k] = true
		}
	})
	each(func(it *item, e *end) {
		if e.term != nil || e.text == "" && e.pin == "" {
			return
		}
		// "J1 8" where J1 has cavities elsewhere: a blank, or the end of a line, parts the two.
		if at := strings.LastIndexByte(e.text, ' '); e.pin == "" && at > 0 && strings.ContainsAny(e.text[at:], "0123456789") && isCavity(e.text[at+1:]) {
			name := strings.TrimSpace(e.text[:at])
			if t := im.byKey[key(name)]; pinned[key(name)] || t != nil && t.titled {
				e.text, e.pin = name, e.text[at+1:]
			}
		}
		k, stud := key(e.text), false
		t := im.byKey[k]
		switch {
		case e.text == "":
			it.notes = append(it.notes, "cavity "+e.pin)
			im.say(Warn, "cavity without connector", it.place, e.pin, "kept in the note")
			*e = end{}
			return
		case stateOf(e.text) != used || isUnknown(e.text):
			if text := joinNonEmpty(" ", e.text, e.pin); stateOf(text) == used {
				it.notes = append(it.notes, "end: "+text)
				im.say(Note, "end not known", it.place, text, "kept in the note")
			}
			*e = end{}
			return
		case e.pin == "" && !pinned[k] && isSpliceName(e.text):
			e.splice = im.splice(e.text)
			return
		case e.pin == "" && strings.Contains(e.text, ":"):
			it.notes = append(it.notes, "end: "+e.text)
			im.say(Warn, "end not understood", it.place, e.text, "kept in the note, no end made")
			*e = end{}
			return
		case e.pin == "" && bare[k] == 1 && !pinned[k] && (t == nil || !t.titled):
			e.pin = "1"
			im.say(Note, "end without cavity", it.place, e.text, "taken as a termination of one cavity")
		case e.pin == "" && isStud(e.text) && !pinned[k] && (t == nil || !t.titled):
			e.pin, stud = "1", true
		case e.pin == "":
			it.notes = append(it.notes, "end at "+e.text)
			im.say(Warn, "end without cavity, named more than once", it.place, e.text, "kept in the note, no end made")
			*e = end{}
			return
		}
		e.pin = strings.ReplaceAll(e.pin, ":", "-")
		e.term = im.named(e.text, it.place, false)
		if stud && !e.term.stud {
			e.term.stud = true
			im.say(Note, "a stud of several wires", it.place, e.text, "taken as a termination of one cavity, all of them in it")
		}
		e.term.pin(e.pin, it.state, it.place)
	})
	im.items = slices.DeleteFunc(im.items, func(it *item) bool {
		if it.from.String() == "" && it.to.String() != "" {
			it.from, it.to = it.to, it.from
		}
		if it.state != blank && it.state != reserved {
			return false
		}
		im.restOf(it, joinNonEmpty(" to ", it.from.String(), it.to.String()))
		return true
	})
}

// key is a name without case and signs, but for the one that tells the two poles apart.
func key(name string) string {
	return strings.Join(append(words(fold(name)), plusMinus(name)...), " ")
}

// isUnknown: a mark that says the list's maker does not know either.
func isUnknown(s string) bool {
	f := strings.Trim(fold(s), " .")
	return strings.Trim(f, "?") == "" || f == "tbd" || f == "tba" || f == "tbc" || f == "to be decided" || f == "to be confirmed" || f == "offen" || f == "unknown" || f == "see note" || f == "see notes" || f == "unbekannt"
}

// isSpliceName: "S1", "SP 3", "SP-2", "Splice 12", "Spleiß 2", "Splice S1".
func isSpliceName(name string) bool {
	whole := spliceID(fold(name))
	f := strings.TrimRight(whole, "0123456789")
	if f == whole || f == "s-" {
		return false
	}
	return slices.Contains(append(spliceWords(), "s", "sp", "spl"), strings.TrimRight(f, " -_#."))
}

func spliceWords() []string {
	return []string{"splice", "spleiss", "spleiß", "epissure", "épissure", "empalme", "giunzione", "giunto"}
}

// spliceID takes the word off a splice that has a name besides: "Splice S1" is S1.
func spliceID(name string) string {
	f := strings.ToLower(name)
	for _, w := range spliceWords() {
		rest, ok := strings.CutPrefix(f, w)
		if rest = strings.TrimLeft(rest, " -#.:"); ok && len(rest)+len(w) < len(f) && len(f) == len(name) && strings.TrimLeft(rest, "0123456789") != "" && strings.TrimRight(rest, "0123456789") != rest && !strings.Contains(rest, " ") {
			return name[len(name)-len(rest):]
		}
	}
	return name
}

// splice makes or finds a splice; where it stands is settled with the tree.
func (im *importer) splice(name string) string {
	id := strings.Join(strings.Fields(strings.ReplaceAll(spliceID(name), ":", "-")), "-")
	if !im.spliceIDs[id] {
		im.spliceIDs[id] = true
		im.h.Splices = append(im.h.Splices, model.Splice{ID: id})
	}
	return id
}

// nextSplice is the first free S1, S2 ….
func (im *importer) nextSplice() string {
	for {
		im.splices++
		if id := fmt.Sprintf("S%d", im.splices); !im.spliceIDs[id] {
			return im.splice(id)
		}
	}
}
