package edit

import (
	"slices"
	"strings"

	"contralay/model"
)

// Noun is the kind of a thing that has an id, by the word of its table in a file.
type Noun string

// The nouns that other things of a harness name.
const (
	Termination Noun = "termination"
	Breakout    Noun = "breakout"
	Splice      Noun = "splice"
	Wire        Noun = "wire"
	Feed        Noun = "feed"
	Unit        Noun = "unit"
	Branch      Noun = "branch"
)

// Nouns are all of them, in the order of a file.
var Nouns = []Noun{Termination, Breakout, Splice, Wire, Feed, Unit, Branch}

// A thing is one noun with its id.
type thing struct {
	noun Noun
	id   string
}

// names is what a text of a harness may name.
type names int

const (
	aPlace  names = iota // a termination or a breakout
	aBranch              // a branch
	aWire                // a wire
	aPiece               // a wire or a unit
	anEnd                // TERMINATION:CAVITY, or a splice
	aDrain               // an end, or one of the words "shell" and "cut"
)

// named is the things that a text may name. The words of a drain name nothing, even where a
// splice is called so.
func (n names) named(text string) []thing {
	switch {
	case text == "" || n == aDrain && (text == "shell" || text == "cut"):
		return nil
	case n == aPlace:
		return []thing{{Termination, text}, {Breakout, text}}
	case n == aBranch:
		return []thing{{Branch, text}}
	case n == aWire:
		return []thing{{Wire, text}}
	case n == aPiece:
		return []thing{{Wire, text}, {Unit, text}}
	}
	if end, _ := model.ParseEnd(text); end.Splice == "" {
		return []thing{{Termination, end.Termination}}
	}
	return []thing{{Splice, text}}
}

// with is a text that names another thing in place of the one it named.
func (n names) with(text, id string) string {
	if _, cavity, is := strings.Cut(text, ":"); is && (n == anEnd || n == aDrain) {
		return id + ":" + cavity
	}
	return id
}

// A visit is asked for each text that may name something: it returns what the text is to be,
// and false where nothing is to be named there any more. owner is the id of what has the text.
type visit func(owner, text string) (string, bool)

// A mention is one place of a harness where an id may stand.
type mention struct {
	path  string // the fields that lead there
	noun  string // the table that has it
	key   string // of the file
	names names

	// what is named there need not be in the harness: it stays when its thing is removed
	outlives bool
	// a layer: what is removed leaves it the way Branch.Take has it
	layer bool

	each func(h *model.Harness, f visit) // changes h, whose lists it copies before it changes them
}

// mentions is every place where an id may stand, but for the record of what was built. A
// record is what somebody did and signed for, on a harness that carries its labels: it keeps
// the names that were in force then.
var mentions = []mention{
	{path: "Board.Datum", noun: "board", key: "datum", names: aPlace, each: func(h *model.Harness, f visit) {
		f.opt("", &h.Board.Datum)
	}},
	{path: "Splices.At", noun: "splice", key: "at", names: aPlace, each: func(h *model.Harness, f visit) {
		h.Splices = changed(h.Splices, func(s *model.Splice) bool { return f.plain(s.ID, &s.At) })
	}},
	{path: "Splices.Toward", noun: "splice", key: "toward", names: aBranch, each: func(h *model.Harness, f visit) {
		h.Splices = changed(h.Splices, func(s *model.Splice) bool { return f.opt(s.ID, &s.Toward) })
	}},
	{path: "Wires.From", noun: "wire", key: "from", names: anEnd, each: onWires(func(w *model.Wire) *model.Opt[string] { return &w.From })},
	{path: "Wires.To", noun: "wire", key: "to", names: anEnd, each: onWires(func(w *model.Wire) *model.Opt[string] { return &w.To })},
	{path: "Wires.Return", noun: "wire", key: "return", names: aWire,
		each: onWires(func(w *model.Wire) *model.Opt[string] { return &w.Return })},
	{path: "Wires.CappedAt", noun: "wire", key: "capped_at", names: aPlace,
		each: onWires(func(w *model.Wire) *model.Opt[string] { return &w.CappedAt })},
	{path: "Feeds.Wires", noun: "feed", key: "wires", names: aWire, each: func(h *model.Harness, f visit) {
		h.Feeds = changed(h.Feeds, func(v *model.Feed) bool { return f.list(v.ID, &v.Wires) })
	}},
	{path: "Units.Wires", noun: "unit", key: "wires", names: aWire, each: func(h *model.Harness, f visit) {
		h.Units = changed(h.Units, func(u *model.Unit) bool { return f.list(u.ID, &u.Wires) })
	}},
	{path: "Units.DrainFrom", noun: "unit", key: "drain_from", names: aDrain, each: func(h *model.Harness, f visit) {
		h.Units = changed(h.Units, func(u *model.Unit) bool { return f.opt(u.ID, &u.DrainFrom) })
	}},
	{path: "Units.DrainTo", noun: "unit", key: "drain_to", names: aDrain, each: func(h *model.Harness, f visit) {
		h.Units = changed(h.Units, func(u *model.Unit) bool { return f.opt(u.ID, &u.DrainTo) })
	}},
	{path: "Branches.From", noun: "branch", key: "from", names: aPlace, each: func(h *model.Harness, f visit) {
		h.Branches = changed(h.Branches, func(b *model.Branch) bool { return f.plain(b.ID, &b.From) })
	}},
	{path: "Branches.To", noun: "branch", key: "to", names: aPlace, each: func(h *model.Harness, f visit) {
		h.Branches = changed(h.Branches, func(b *model.Branch) bool { return f.plain(b.ID, &b.To) })
	}},
	{path: "Branches.Layers.Of", noun: "branch", key: "of", names: aPiece, layer: true, each: onLayers(ofLayer)},
	{path: "Branches.Layers.Pinned", noun: "branch", key: "pinned", names: aPiece, layer: true, each: onLayers(pinnedIn)},
	{path: "Branches.Asides.Layers.Of", noun: "branch", key: "of", names: aPiece, outlives: true, each: onAsides(ofLayer)},
	{path: "Branches.Asides.Layers.Pinned", noun: "branch", key: "pinned", names: aPiece, outlives: true, each: onAsides(pinnedIn)},
	{path: "Listed.Ends", noun: "listed", key: "ends", names: anEnd, outlives: true, each: func(h *model.Harness, f visit) {
		h.Listed = changed(h.Listed, func(l *model.Listed) bool { return f.list(l.Signal.V, &l.Ends) })
	}},
}

func ofLayer(l *model.Layer) *[]string  { return &l.Of }
func pinnedIn(l *model.Layer) *[]string { return &l.Pinned }

func onWires(at func(*model.Wire) *model.Opt[string]) func(*model.Harness, visit) {
	return func(h *model.Harness, f visit) {
		h.Wires = changed(h.Wires, func(w *model.Wire) bool { return f.opt(w.ID, at(w)) })
	}
}

func onLayers(at func(*model.Layer) *[]string) func(*model.Harness, visit) {
	return func(h *model.Harness, f visit) {
		h.Branches = changed(h.Branches, func(b *model.Branch) bool { return f.layers(b.ID, &b.Layers, at) })
	}
}

func onAsides(at func(*model.Layer) *[]string) func(*model.Harness, visit) {
	return func(h *model.Harness, f visit) {
		h.Branches = changed(h.Branches, func(b *model.Branch) bool {
			touched := false
			b.Asides = changed(b.Asides, func(a *model.Aside) bool {
				is := f.layers(b.ID, &a.Layers, at)
				touched = touched || is
				return is
			})
			return touched
		})
	}
}

// changed is a list with the elements that f changed; f gets a copy of each and says whether
// it changed it. A list of which nothing changed is returned as it was.
func changed[T any](all []T, f func(*T) bool) []T {
	out, copied := all, false
	for i := range all {
		v := all[i]
		if !f(&v) {
			continue
		}
		if !copied {
			out, copied = slices.Clone(all), true
		}
		out[i] = v
	}
	return out
}

// plain visits a text that is always there.
func (f visit) plain(owner string, at *string) bool {
	text, _ := f(owner, *at)
	was := *at
	*at = text
	return text != was
}

// opt visits a text that may be left out.
func (f visit) opt(owner string, at *model.Opt[string]) bool {
	if !at.Set {
		return false
	}
	text, stays := f(owner, at.V)
	switch {
	case !stays:
		*at = model.Opt[string]{}
	case text == at.V:
		return false
	default:
		at.V = text
	}
	return true
}

// list visits each text of a list.
func (f visit) list(owner string, at *[]string) bool {
	out, touched := make([]string, 0, len(*at)), false
	for _, was := range *at {
		text, stays := f(owner, was)
		touched = touched || !stays || text != was
		if stays {
			out = append(out, text)
		}
	}
	if touched {
		*at = out
	}
	return touched
}

// layers visits each text of a list in each layer.
func (f visit) layers(owner string, all *[]model.Layer, at func(*model.Layer) *[]string) bool {
	touched := false
	*all = changed(*all, func(l *model.Layer) bool {
		is := f.list(owner, at(l))
		touched = touched || is
		return is
	})
	return touched
}
