package question

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/query/cliff"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
	"contralay/ui/paper/figure"
	"contralay/ui/strip"
)

// Terms is what is asked beside the pieces.
type Terms struct {
	Ratio   unit.Ratio // lay length over OD
	Spares  int
	Centres string // "equal", "unequal" or "built"
	Centre  string // a number of pieces, or the pieces themselves; "" is any
	Layers  int    // round the centre; 0 is any
	Effort  int    // of the search; 0 is an answer at once
}

// Question is what is to be laid, and how.
type Question struct {
	ask    plan.Ask
	pieces []offer.Piece
	rules  model.Rules
	cat    *catalogue.Catalogue
}

// Read reads the pieces as they are typed, each with its quantity first. An error is one sentence
// that says which of them is wrong and what is allowed.
func Read(args []string, t Terms, cat *catalogue.Catalogue) (Question, error) {
	l := model.Rules{}.Resolve()
	q := Question{cat: cat, rules: model.Rules{LayRatio: model.Some(t.Ratio)}, ask: plan.Ask{Spares: t.Spares, Effort: t.Effort,
		Round: t.Layers, Rules: plan.Rules{LayRatio: t.Ratio, LiftMax: l.LiftMax, LiftTight: l.LiftTight, GapInner: l.GapInner,
			GapOuter: l.GapOuter, LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}}}
	switch t.Centres {
	case "equal":
		q.ask.Centres = plan.EqualCentres
	case "unequal":
		q.ask.Centres = plan.UnequalCentres
	case "built":
		q.ask.Centres = plan.BuiltCentres
	}
	for _, a := range args {
		z, err := Piece(a, l.Spec, cat)
		if err != nil {
			return Question{}, err
		}
		q.pieces = append(q.pieces, z)
		q.ask.Sizes = append(q.ask.Sizes, plan.Size{D: z.OverMM, N: z.N})
	}
	return q, q.hold(t.Centre, l.Spec)
}

// Answer is the lay-ups of a question, best first, with what each would be as a branch.
type Answer struct {
	plans []plan.Plan
	as    []*sheet.Branch
}

// Answer works a question out.
func (q Question) Answer() Answer {
	a := Answer{plans: plan.Make(q.ask)}
	for _, p := range a.plans {
		b, _ := offer.Planned(p, q.pieces, q.rules, q.cat)
		a.as = append(a.as, b)
	}
	return a
}

// Text is the answer as a page.
func (a Answer) Text() string { return paper.Plans(a.plans, a.as) }

// JSON is the answer as a list of plans.
func (a Answer) JSON() ([]byte, error) { return figure.Plans(a.plans, a.as) }

// Strip is what one more and one fewer of the commonest size cost, as text that
// goes on below the answer; "" where there is no lay-up.
func (q Question) Strip(ascii bool) string {
	a, ok := cliff.OfPieces(q.ask, q.pieces, q.rules, q.cat)
	if !ok {
		return ""
	}
	s := cliff.Begin(a)
	sheet.Beside(a.Most-a.Least+1, func(k int) { s.Put(a.At(a.Least + k)) })
	if now, _ := s.Point(a.Now); now.Branch == nil {
		return ""
	}
	return "\n" + strip.Text(s, ascii)
}

// mostOfOne bounds a quantity: more is no hand-laid bundle.
const mostOfOne = 500

// hold holds the centre that is asked for: a number of pieces, or the pieces themselves.
func (q *Question) hold(centre, spec string) error {
	if centre == "" {
		return nil
	}
	if n, err := strconv.Atoi(centre); err == nil {
		if n < 1 || n > 5 {
			return fmt.Errorf("--centre %q: a centre holds 1 to 5 pieces", centre)
		}
		q.ask.CentreN = n
		return nil
	}
	held := plan.Held{Locked: true}
	var all []unit.Millimetre
	for part := range strings.SplitSeq(centre, ",") {
		z, err := Piece(part, spec, q.cat)
		if err != nil {
			return err
		}
		have := 0
		for _, s := range q.ask.Sizes {
			if s.D == z.OverMM {
				have += s.N
			}
		}
		if z.N > have {
			return fmt.Errorf("--centre %q: it names %s, and the pieces to lay have %d of that size", centre, part, have)
		}
		held.Sizes = append(held.Sizes, plan.Size{D: z.OverMM, N: z.N})
		for range z.N {
			all = append(all, z.OverMM)
		}
	}
	if !lay.CanBeCentre(all) {
		return fmt.Errorf("--centre %q: a centre is one piece, two to five of one size, or two or three of different sizes", centre)
	}
	q.ask.Held = append(q.ask.Held, held)
	return nil
}

// Piece reads one size with its quantity: 32x22, of the specification, or 2x2.9mm. An error says
// what is allowed.
func Piece(text, spec string, cat *catalogue.Catalogue) (offer.Piece, error) {
	quantity, size, found := strings.Cut(strings.ToLower(text), "x")
	n, err := strconv.Atoi(quantity)
	if !found || err != nil || n < 1 || n > mostOfOne {
		return offer.Piece{}, fmt.Errorf("%q: write quantity x size, such as 32x22 or 2x2.9mm. The quantity is 1 to %d", text, mostOfOne)
	}
	if t, isMM := strings.CutSuffix(size, "mm"); isMM {
		d, err := unit.ParseNumber(t)
		if err != nil || d < 0.1 || d > 50 {
			return offer.Piece{}, fmt.Errorf("%q: the diameter must be 0.1 to 50 mm", text)
		}
		return offer.Piece{OverMM: unit.Millimetre(d), N: n}, nil
	}
	e, known := cat.Wire(spec, size)
	if !known {
		return offer.Piece{}, fmt.Errorf("%q: %s has no size %s. It has %s", text, spec, size, strings.Join(cat.Sizes(spec), " "))
	}
	return offer.Piece{Spec: spec, Size: size, OverMM: e.OverMM, N: n}, nil
}
