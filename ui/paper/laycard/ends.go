package laycard

import (
	"fmt"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// endOf is what stands at one end of a branch: boot, label and loop of a termination, transition or
// closure and zone of a breakout; "" where nothing is known of it.
func endOf(m list.Maker, branch int, end string) string {
	if t, ok := m.S.Index.Termination[end]; ok {
		return terminationOf(m, t)
	}
	j, ok := m.S.Index.Breakout[end]
	if !ok {
		return ""
	}
	br := &m.H.Breakouts[j]
	outlet := ""
	if o, ok := over.OutletAt(m.S, branch, end); ok {
		outlet = fmt.Sprintf("outlet %s / %s", m.Sys.Diameter(o.ExpandedMM), m.Sys.Diameter(o.RecoveredMM))
	}
	return strings.Join(list.NonEmpty(end, list.Word("transition ", br.Transition.V), outlet, string(br.Build.V),
		"zone "+m.Sys.Length(br.ZoneMM.Or(m.S.Limits.ZoneMM))), " ")
}

// terminationOf is boot, clock, label and loop of a termination.
func terminationOf(m list.Maker, t int) string {
	e, l := &m.H.Terminations[t], over.LoopRoomOf(m.S, t)
	loop := ""
	if l.LoopMM > 0 {
		loop = "loop " + m.Sys.Length(l.LoopMM)
	}
	return strings.Join(list.NonEmpty(e.ID, list.Word("boot ", e.Boot.V), m.Clock(e), list.Word("label ", labelSleeve(m, e.ID)), loop),
		", ")
}

// labelSleeve is the marker sleeve at an end, short; "" where it has none.
func labelSleeve(m list.Maker, end string) string {
	for _, l := range lists.Labels(m.S) {
		if l.Of == end {
			return strings.TrimPrefix(l.Sleeve, "marker sleeve ")
		}
	}
	return ""
}

// Cover is one cover of a branch, or its sheath.
type Cover struct {
	What, Part, Shelf string
	Start, Stop       string // from the datum of the from end
	CutMM             unit.Millimetre
	Cut               string // "-" where it comes in its length
	OD                string // over it
	Proposed          bool
}

// coversOf is the covers of a branch inside out, the sheath between those beneath it and those over
// it.
func coversOf(m list.Maker, b *sheet.Branch) []Cover {
	var under, outside []Cover
	for k := range b.Covers {
		c := &b.Covers[k]
		row := Cover{What: string(c.What), Part: list.Dash(c.Part), Shelf: c.Tube.V.ShelfLabel, Start: m.Sys.Length(c.FromMM),
			Stop: m.Sys.Length(c.ToMM), CutMM: c.CutMM, Cut: "-", OD: m.Sys.Diameter(c.OverMM)}
		if c.CutMM > 0 {
			row.Cut = m.Sys.AtLeast(c.CutMM)
		}
		if c.ThickGuess {
			row.OD += "~"
		}
		if c.Under {
			under = append(under, row)
		} else {
			outside = append(outside, row)
		}
	}
	if b.Sheath.Part != "" {
		under = append(under, sheathOf(m, &b.Sheath))
	}
	return append(under, outside...)
}

func sheathOf(m list.Maker, s *sheet.Sheath) Cover {
	row := Cover{What: string(model.CoverSheath), Part: s.Part, Shelf: s.Tube.V.ShelfLabel, Start: m.Sys.Length(s.FromMM),
		Stop: m.Sys.Length(s.ToMM), Cut: "-", OD: "-", Proposed: s.Proposed}
	if s.Tube.Set {
		row.CutMM, row.Cut = s.CutMM, m.Sys.AtLeast(s.CutMM)
	}
	if s.Verdict.Wraps {
		row.OD = m.Sys.Diameter(s.Verdict.OverMM) + list.Mem(s.Tube.V.WallStanding)
	}
	return row
}
