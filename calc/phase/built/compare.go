package built

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/unit"
)

// How near a length is the same. Hand work is not closer, and a reel that is measured during
// the run moves every figure by a little without making anything wrong. Common practice, no
// source.
const (
	sameCut   unit.Millimetre = 10  // of a wire or a tube as cut, or the step it is rounded to: the tails have 75 mm and more
	samePlace unit.Millimetre = 5   // of a branch, or of where a cover starts and stops
	sameShare                 = 0.1 // of a lay length or an OD
)

// change is one thing that a step made and the sheet now has otherwise.
type change struct {
	field   field
	is, was string
}

// field names what of a step is compared.
type field string

// The fields of model.What that are compared.
const (
	fieldSpec     field = "specification"
	fieldSize     field = "size"
	fieldColour   field = "colour"
	fieldPart     field = "part"
	fieldPlace    field = "place"
	fieldHand     field = "hand"
	fieldMembers  field = "members"
	fieldEnds     field = "ends"
	fieldFillers  field = "number of fillers"
	fieldFiller   field = "filler diameter"
	fieldBind     field = "tape wound on"
	fieldCut      field = "length"
	fieldFinished field = "finished length"
	fieldFrom     field = "start"
	fieldTo       field = "end"
	fieldLay      field = "lay"
	fieldOver     field = "OD"
	fieldBranch   field = "branch length"
)

// follows reports whether a field only follows from others: a step that is done again for
// another reason is not named for such a one as well.
func (f field) follows() bool {
	switch f {
	case fieldCut, fieldFinished, fieldFrom, fieldTo, fieldLay, fieldOver, fieldBranch:
		return true
	}
	return false
}

// changes are what is otherwise between what a step made and what the sheet has it make.
func changes(k Kind, step unit.Millimetre, was, is model.What) []change {
	var out []change
	text := func(f field, a, b model.Opt[string]) {
		if a.V != b.V {
			out = append(out, change{f, b.Or("none"), a.Or("none")})
		}
	}
	list := func(f field, a, b []string) {
		if !slices.Equal(a, b) && !slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b))) {
			out = append(out, change{f, strings.Join(b, " "), strings.Join(a, " ")})
		}
	}
	length := func(f field, a, b model.Opt[unit.Millimetre], decimals int, same func(a, b float64) bool) {
		if a.Set != b.Set || a.Set && !same(float64(a.V), float64(b.V)) {
			out = append(out, change{f, millimetres(b, decimals), millimetres(a, decimals)})
		}
	}
	within := func(mm unit.Millimetre) func(a, b float64) bool {
		return func(a, b float64) bool { return math.Abs(a-b) <= float64(mm)+1e-9 }
	}
	share := func(a, b float64) bool { return math.Abs(a-b) <= sameShare*max(a, b)+1e-9 }
	text(fieldSpec, was.Spec, is.Spec)
	text(fieldSize, was.Size, is.Size)
	text(fieldColour, was.Colour, is.Colour)
	text(fieldPart, was.Part, is.Part)
	text(fieldPlace, was.Place, is.Place)
	if was.Hand != is.Hand {
		out = append(out, change{fieldHand, string(is.Hand.Or("none")), string(was.Hand.Or("none"))})
	}
	list(fieldMembers, was.Members, is.Members)
	list(fieldEnds, was.Ends, is.Ends)
	if was.Fillers.V != is.Fillers.V {
		out = append(out, change{fieldFillers, fmt.Sprint(is.Fillers.V), fmt.Sprint(was.Fillers.V)})
	}
	near := within(0.05)
	length(fieldFiller, was.FillerMM, is.FillerMM, 2, near)
	length(fieldBind, was.BindMM, is.BindMM, 2, near)
	length(fieldCut, was.MM, is.MM, 0, within(max(sameCut, step)))
	length(fieldFinished, was.FinishedMM, is.FinishedMM, 0, within(sameCut))
	length(fieldFrom, was.FromMM, is.FromMM, 0, within(samePlace))
	length(fieldTo, was.ToMM, is.ToMM, 0, within(samePlace))
	length(fieldLay, was.LayMM, is.LayMM, 0, share)
	length(fieldOver, was.OverMM, is.OverMM, 1, share)
	if k != Cut { // a wire is as long as it is, whatever way it goes
		if a, b := total(was.PathMM), total(is.PathMM); math.Abs(float64(a-b)) > float64(samePlace)+1e-9 {
			out = append(out, change{fieldBranch, millimetres(model.Some(b), 0), millimetres(model.Some(a), 0)})
		}
	}
	return out
}

func total(mm []unit.Millimetre) unit.Millimetre {
	sum := unit.Millimetre(0)
	for _, v := range mm {
		sum += v
	}
	return sum
}

func millimetres(v model.Opt[unit.Millimetre], decimals int) string {
	if !v.Set {
		return "none"
	}
	return unit.Fixed(v.V, decimals) + " mm"
}

// wireSays is a wire in the words it is grabbed by, its specification only where asked for.
func wireSays(w model.What, spec bool) string {
	text := strings.TrimSpace(model.SizeWords(w.Size.V) + " " + model.ColourWords(w.Colour.V))
	if spec {
		text = w.Spec.V + " " + text
	}
	return text
}

// says is what is otherwise in one step, and what of it was built.
func says(f Fact, was model.What, all []change) (says, built string) {
	if f.Kind == Cut {
		return wireChanged(f, was, all)
	}
	if !onlyFollows(all) { // what follows from that is not worth a word
		all = slices.DeleteFunc(slices.Clone(all), func(c change) bool { return c.field.follows() })
	}
	if slices.ContainsFunc(all, func(c change) bool { return c.field == fieldMembers }) {
		all = slices.DeleteFunc(slices.Clone(all), func(c change) bool { return c.field == fieldHand })
	}
	var is, had []string
	for _, c := range all {
		switch c.field {
		case fieldMembers:
			more, less := apart(f.What.Members, was.Members)
			is, had = append(is, exchanged(more, less)), append(had, "with "+strings.Join(was.Members, " "))
		case fieldEnds:
			now, then := endsApart(f.What.Ends, was.Ends)
			is, had = append(is, now), append(had, then)
		case fieldPart:
			is, had = append(is, fmt.Sprintf("is %s, was %s", c.is, c.was)), append(had, c.was)
		case fieldBranch:
			is, had = append(is, fmt.Sprintf("is on %s of branch, was on %s", c.is, c.was)), append(had, "for "+c.was+" of branch")
		default:
			is, had = append(is, fmt.Sprintf("%s is %s, was %s", c.field, c.is, c.was)), append(had, string(c.field)+" "+c.was)
		}
	}
	head := map[Kind]string{Make: "unit ", Join: "splice "}[f.Kind] + f.At
	return head + " " + strings.Join(is, " and "), strings.Join(had, ", ")
}

// endsApart is what cavities take now and took: "cavity 2 takes 103, took 102".
func endsApart(is, was []string) (now, then string) {
	split := func(all []string) (order []string, in map[string]string) {
		in = map[string]string{}
		for _, end := range all {
			cavity, wire, _ := strings.Cut(end, " ")
			order, in[cavity] = append(order, cavity), wire
		}
		return order, in
	}
	order, a := split(is)
	before, b := split(was)
	var says, built []string
	for _, cavity := range append(order, before...) {
		x, y := a[cavity], b[cavity]
		if x == y {
			continue
		}
		delete(a, cavity) // said once
		delete(b, cavity)
		says = append(says, fmt.Sprintf("cavity %s takes %s, took %s", cavity, cmp.Or(x, "nothing"), cmp.Or(y, "nothing")))
		built = append(built, cavity+" "+cmp.Or(y, "nothing"))
	}
	return strings.Join(says, " and "), strings.Join(built, ", ")
}

// wireChanged is a wire that is another one now: "wire 101 is 20 AWG yellow, was 22 AWG brown,
// 750 mm".
func wireChanged(f Fact, was model.What, all []change) (says, built string) {
	spec, looks := false, false
	for _, c := range all {
		spec = spec || c.field == fieldSpec
		looks = looks || c.field == fieldSpec || c.field == fieldSize || c.field == fieldColour
	}
	built = wireSays(was, spec) + ", " + millimetres(was.MM, 0)
	longer := ""
	for _, c := range all {
		if c.field == fieldCut || c.field == fieldFinished && longer == "" {
			longer = c.is
		}
	}
	switch {
	case !looks:
		return fmt.Sprintf("wire %s is %s, was %s", f.At, millimetres(f.What.MM, 0), millimetres(was.MM, 0)), built
	case longer != "":
		return fmt.Sprintf("wire %s is %s, %s, was %s", f.At, wireSays(f.What, spec), millimetres(f.What.MM, 0), built), built
	}
	return fmt.Sprintf("wire %s is %s, was %s", f.At, wireSays(f.What, spec), built), built
}

// apart is what is in one list and not in the other.
func apart(is, was []string) (more, less []string) {
	for _, m := range is {
		if !slices.Contains(was, m) {
			more = append(more, m)
		}
	}
	for _, m := range was {
		if !slices.Contains(is, m) {
			less = append(less, m)
		}
	}
	return more, less
}

// exchanged says what a step has now and had not, and the other way round.
func exchanged(more, less []string) string {
	switch {
	case len(less) == 0:
		return "has " + strings.Join(more, ", ") + " too"
	case len(more) == 0:
		return "no longer has " + strings.Join(less, ", ")
	}
	return fmt.Sprintf("has %s, had %s", strings.Join(more, ", "), strings.Join(less, ", "))
}
