package laycard

import (
	"fmt"
	"strings"

	"contralay/calc/phase/built"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// Card is what is printed of one branch.
type Card struct {
	Branch   int // its index
	ID, Name string
	From, To string // its ends; it is laid and seen from From
	Length   string // "560 mm, -0 +10, boot lip of P1 to J1": the centre of a breakout is said once
	Start    Start
	Layers   []Layer
	OD       string // of the bundle, with its band: "10.2 (9.9 to 10.5) mm"
	Stops    string // where the lay stops; "" where it goes all the way
	Bend     string // the least radius; "" where it is not known
	Covers   []Cover
	Ends     []string // boot and label at each end that is a termination, transition at a breakout
	After    []int    // splices that are made once it is laid
	Why      string   // why there is no lay to print; "" where there is
}

// Layer is one layer of it.
type Layer struct {
	Index   int
	Name    string // "Centre", "Layer 1"
	Hand    model.Hand
	LayMM   unit.Millimetre // to 5 mm, as it is set; 0: straight
	Turns   string          // how many there are in the branch; "" for a straight one
	OD      string          // over the layer, in the unit of the sheet
	ODMM    unit.Millimetre
	Built   string // what the centre is built up to with tape; "" where it is not
	Bind    string // what tape or thread adds, and which; "" for none
	Fillers string // how many of which; "" for none
	Spares  string // their ids; "" for none
	Before  []int  // splices that are made before it is laid
	Rows    []Row  // in the order in which they lie, clockwise
}

// Row is one piece of a layer.
type Row struct {
	Position int // from 1, clockwise seen from the from end
	ID       string
	Kind     sheet.Kind
	Tracer   bool
	Code     string // of its colour; of a unit those of its wires: "9 + 6"
	Colour   string // the same in words
	Size     string // with its unit
	Starts   string // cavity at the near end; "" where it does not end there
	Leaves   string // the branch that it goes on into, the splice or the end where it stops
	To       string // its end beyond the far end: "INJ1:2", "splice S3"
	Splice   string // the splice within this branch that it ends in; "" for none
	Of       sheet.Member
}

// mostLeg is how many pieces a branch of one layer has at most to be a row of the table of legs: they
// are twisted together at once, and the order alone says how.
const mostLeg = 5

// leg reports whether a branch is a row of the table of legs.
func leg(b *sheet.Branch) bool { return len(b.Layers) == 1 && len(b.Layers[0].Members) <= mostLeg }

// mostBlock is how many pieces a branch has at most that is printed in one block.
const mostBlock = 20

// CardOf is the card of a branch.
func CardOf(m list.Maker, branch int) Card {
	mb, b := &m.H.Branches[branch], &m.S.Branches[branch]
	c := Card{Branch: branch, ID: mb.ID, Name: mb.Name.V, From: mb.From, To: mb.To, Start: startOf(m, mb.From),
		Covers: coversOf(m, b)}
	c.Length = list.LongIn(m.Sys, mb)
	if len(mb.ToleranceMM) == 2 {
		c.Length += ", " + m.Tolerance(mb)
	}
	c.Length = fmt.Sprintf("%s, %s to %s", strings.TrimSuffix(c.Length, ","), strings.TrimPrefix(m.Datum(mb.From), "centre of "),
		strings.TrimPrefix(m.Datum(mb.To), "centre of "))
	switch {
	case len(b.Components) == 0:
		c.Why = "Nothing runs here."
		return c
	case b.OverMM <= 0:
		c.Why = "It cannot be laid yet: a piece of it has no diameter, or no lay-up was found. The open points say which."
		return c
	}
	c.OD = m.Band(b)
	if stop := mb.LengthMM - b.LaidMM; b.LaidMM > 0 && stop > 1 {
		c.Stops = fmt.Sprintf("lay %s of it", m.Sys.Length(b.LaidMM))
	}
	if b.Bend.MinMM > 0 {
		c.Bend = m.Sys.AtLeast(b.Bend.MinMM) + " " + m.Sys.Name()
	}
	for k := range b.Layers {
		c.Layers = append(c.Layers, layerOf(m, branch, k))
	}
	for _, end := range []string{mb.From, mb.To} {
		if says := endOf(m, branch, end); says != "" {
			c.Ends = append(c.Ends, says)
		}
	}
	for i, made := range built.MadeWhen(m.S) {
		switch {
		case made.Branch != branch:
		case made.Layer < len(c.Layers):
			c.Layers[made.Layer].Before = append(c.Layers[made.Layer].Before, i)
		default:
			c.After = append(c.After, i)
		}
	}
	return c
}

// Pieces is how many pieces all layers have together, fillers counted.
func (c *Card) Pieces() int {
	n := 0
	for k := range c.Layers {
		n += len(c.Layers[k].Rows)
	}
	return n
}

// title is how a branch is called.
func (c *Card) title() string { return strings.TrimSpace(c.ID + "  " + c.Name) }

func layerOf(m list.Maker, branch, k int) Layer {
	b := &m.S.Branches[branch]
	l := &b.Layers[k]
	out := Layer{Index: k, Name: list.Capital(model.LayerName(k)), Hand: l.Hand, OD: m.Sys.Diameter(l.OverMM), ODMM: l.OverMM,
		Built: l.BuiltUp(m.Sys), Rows: rowsOf(m, branch, k)}
	if l.LayMM > 0 {
		out.LayMM, out.Turns = list.Turn(l.LayMM), unit.Fixed(l.Turns, 1)
	} else {
		out.Hand = model.HandStraight
	}
	if k < len(b.As) && b.As[k].BindMM.V > 0 && out.Built == "" {
		out.Bind = fmt.Sprintf("%s over it: adds %s %s to the OD", list.Capital(wordOr(b.As[k].BindPart.V, "tape or thread")),
			m.Sys.Fine(b.As[k].BindMM.V), m.Sys.Name())
	}
	if l.Fillers > 0 {
		out.Fillers = fmt.Sprintf("%d of %s %s", l.Fillers, m.Sys.Fine(l.FillerMM), m.Sys.Name())
	}
	var spares []string
	for _, r := range out.Rows {
		if r.Kind == sheet.OfSpare {
			spares = append(spares, r.ID)
		}
	}
	out.Spares = strings.Join(spares, " ")
	return out
}

// wordOr is a text, or another where there is none.
func wordOr(text, other string) string {
	if text == "" {
		return other
	}
	return text
}
