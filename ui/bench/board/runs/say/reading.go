package say

import (
	"fmt"

	"contralay/calc/query/run"
	"contralay/ui/bench/desk"
)

// BuiltUp is how far a centre is from what it is built up to.
func BuiltUp(m *desk.Model, e run.Explained) []string {
	head := fmt.Sprintf("Read %s %s, the sheet has %s (%s to %s)", m.Sys.Fine(e.ReadMM), m.Sys.Name(), m.Sys.Diameter(e.SheetMM),
		m.Sys.Diameter(e.LeastMM), m.Sys.Diameter(e.MostMM))
	switch e.Told {
	case run.TooThin:
		return []string{"TOO SMALL: wind more tape.", head + ": " + m.Sys.Fine(e.SheetMM-e.ReadMM) + " to go."}
	case run.TooThick:
		return []string{"TOO LARGE: take tape off.", head + ": " + m.Sys.Fine(e.ReadMM-e.SheetMM) + " too much."}
	}
	return []string{head + ": as it should be."}
}

// Reading explains readings before they are obeyed.
func Reading(m *desk.Model, e run.Explained) []string {
	mm := m.Sys.Name()
	read := m.Sys.Fine(e.ReadMM)
	if e.HighMM > e.ReadMM+0.005 {
		read += " (mean; highest " + m.Sys.Fine(e.HighMM) + ")"
	}
	head := fmt.Sprintf("Read %s %s, the sheet has %s (%s to %s)", read, mm, m.Sys.Diameter(e.SheetMM), m.Sys.Diameter(e.LeastMM),
		m.Sys.Diameter(e.MostMM))
	if e.Told == run.TooThick || e.Told == run.TooThin {
		word, could := "TOO LARGE", "too large for tolerance: a crossed wire or tape"
		if e.Told == run.TooThin {
			word, could = "TOO SMALL", "too small for tolerance: a wire is missing, or the jaws pressed"
		}
		return []string{word + ": look before you go on.", head + ": " + could + "."} // what is wrong is found first
	}
	switch e.Told {
	case run.AsSheet:
		return []string{head + ": as it should be."}
	case run.AsWire:
		end := ""
		switch {
		case e.Top:
			end = ", the top of its tolerance"
		case e.Bottom:
			end = ", the bottom of its tolerance"
		}
		head += fmt.Sprintf(": as if the wire were %s%s: measure the reel.", m.Sys.Fine(e.AsIfMM), end)
	}
	if e.Spec == "" {
		return []string{head}
	}
	next := ""
	if e.NextHolds > 0 {
		next = fmt.Sprintf("the next layer then holds %d of %d; ", e.NextHolds, e.NextTakes)
	}
	sheath := ""
	switch {
	case e.Sheath == "":
	case e.SheathFits:
		sheath = ", and " + e.Sheath + " still fits"
	default:
		sheath = ", and " + e.Sheath + " will not fit"
		if e.Told != run.TooThick && e.Told != run.TooThin && e.OtherSheath != "" {
			sheath += ": " + e.OtherSheath + " fits"
		}
	}
	return []string{head, fmt.Sprintf("If so: %sthe OD becomes %s %s%s. Nothing is moved.", next, m.Sys.Diameter(e.OverMM), mm, sheath)}
}
