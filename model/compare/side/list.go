package side

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/report"
)

// List is a list, or a harness, with what its import reports: what it has a place for, and what is
// kept of it as text. States nil: it has a place for what any wire of it has. Taken nil: it is not
// known whose specification it does not say.
type List struct {
	Harness model.Harness
	report.Report
	Whole bool // it is the file of a harness, which states all there is
}

// Gives reports whether the list has a place for a thing, or holds one.
func (l *List) Gives(what string, has bool) bool { return l.Whole || l.States[what] || has }

// Guesses reports whether it is not known which of its specifications the list says.
func (l *List) Guesses() bool { return !l.Whole && l.Taken == nil }

// HasIDs reports whether its ids are its own, and not the numbers that an import gives.
func (l *List) HasIDs() bool { return l.Whole || l.States == nil || l.States["id"] }

// OwnID is the id of a wire, "" where it is the number that an import gave it.
func (l *List) OwnID(w *model.Wire) string {
	if l.Counted[w.ID] {
		return ""
	}
	return w.ID
}

// Pieces are what the note of a wire is made of: an import keeps each text that has no place of
// its own as one.
func (l *List) Pieces(w *model.Wire) []string {
	if p, ok := l.Notes[w.ID]; ok {
		return p
	}
	if w.Note.V == "" {
		return nil
	}
	return strings.Split(w.Note.V, "; ")
}

// Noted is the text that an import left in the note of a wire as a value: "mauve" of "colour: mauve".
func (l *List) Noted(w *model.Wire, what string) string {
	for _, p := range l.Pieces(w) {
		if text, ok := strings.CutPrefix(p, what+": "); ok {
			return text
		}
	}
	return ""
}

// OrNoted is a value, or where there is none the text of it in the note.
func (l *List) OrNoted(w *model.Wire, stated, what string) string {
	if stated != "" {
		return stated
	}
	return l.Noted(w, what)
}

// endAt begins a piece that says where a wire ends, at no cavity that the list names.
const endAt = "end at "

// EndsAt are the ends of a wire that the list names without a cavity and the harness does not have.
func (l *List) EndsAt(w *model.Wire) (all []string) {
	for _, p := range l.Pieces(w) {
		if at, ok := strings.CutPrefix(p, endAt); ok {
			all = append(all, at)
		}
	}
	return all
}

// HasNotes reports whether the list has a column for what somebody wants to say of a wire.
func (l *List) HasNotes() bool {
	return l.Whole || l.States["note"] ||
		l.States == nil && slices.ContainsFunc(l.Harness.Wires, func(w model.Wire) bool { return len(l.Texts(&w, nil)) > 0 })
}

// Texts are the pieces of a note that are compared as text: not what is compared as the value of a
// field or as an end, and nothing of a column that the other list lacks.
func (l *List) Texts(w *model.Wire, lacks map[string]bool) (all []string) {
	for _, p := range l.Pieces(w) {
		head, text, headed := strings.Cut(p, ": ")
		switch {
		case strings.HasPrefix(p, endAt), headed && head == "length in the list": // compared as ends and lengths
		case headed && lacks[head]:
		case headed && head == "colour" && (w.Colour.V == "" || shaded(w.Colour.V, text) != ""):
		case headed && head == "size" && w.Size == "":
		case headed && head == "current" && !w.Amps.Set:
		case headed && head == "length" && !l.hasLength(w):
		default:
			all = append(all, p)
		}
	}
	return all
}

func (l *List) hasLength(w *model.Wire) bool {
	_, ok := l.Lengths[w.ID]
	return ok
}
