package say

import (
	"fmt"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Step is a step in a few words.
func Step(m *desk.Model, s run.RunStep) string {
	switch s.Kind {
	case run.CutStep:
		return fmt.Sprintf("cut %d x %s %s %s", len(s.Cut.Wires), m.Sys.AtLeast(s.Cut.CutMM), m.Sys.Name(), Size(s.Cut.Size))
	case run.MakeStep:
		return "make up " + s.Of
	case run.LayStep:
		return Layer(s)
	case run.BuildUpStep:
		return Layer(s) + " built up"
	case run.JoinStep:
		return "splice " + s.Of
	case run.ThreadStep:
		return "thread " + string(s.Put.What) + " of " + s.Of
	case run.WindStep:
		return "wind " + string(s.Put.What) + " of " + s.Of
	case run.ShrinkStep:
		return "shrink " + string(s.Put.What) + " of " + s.Of
	case run.PinStep:
		return "contacts of " + s.Of
	case run.GlueStep:
		return "adhesive, " + s.Of
	case run.WeighStep:
		return "weigh it"
	case run.LotStep:
		return "lot of " + Reel(s.Of)
	case run.PullStep:
		return "pull samples of " + s.Of
	}
	if s.Key == run.HoldStops {
		return "hold: open stops"
	}
	return "hold: " + s.Name
}

// Layer is the layer of a step: "T1 layer 2".
func Layer(s run.RunStep) string {
	if s.Layer == 0 {
		return s.Of + " centre"
	}
	return fmt.Sprintf("%s layer %d", s.Of, s.Layer)
}

// Piece is what was done of a piece.
func Piece(m *desk.Model, s run.RunStep, p run.Piece) string {
	switch {
	case p.Check.Kind != run.NoCheck:
		return Passes(p.Check)
	case s.Kind == run.CutStep:
		return p.ID + " is cut"
	case s.Kind == run.LayStep:
		return p.ID + " is on " + Layer(s)
	case p.ID == "":
		return "a plug is in " + s.Of + " " + p.Cavity
	case len(p.Wires) == 0:
		return "the drain of " + p.Drain + " is in " + s.Of + " " + p.Cavity
	}
	return p.ID + " is in " + s.Of + " " + p.Cavity
}

// Group is what + ticks: n pieces, or tubes, are still open.
func Group(m *desk.Model, s run.RunStep, p run.Piece, n int) string {
	switch s.Kind {
	case run.CutStep:
		w := &m.H.Wires[m.Sheet.Index.Wire[p.ID]]
		return words.Plural(n, "wire", "wires") + " off the spool " + Size(w.Size) + " " + model.ColourWords(w.Colour.V)
	case run.LayStep:
		return Layer(s) + ", all of it"
	case run.PinStep:
		return s.Of + ", " + words.Plural(n, "cavity", "cavities")
	case run.HoldStep:
		end, _, _ := strings.Cut(p.Check.From, ":")
		return words.Plural(n, "net", "nets") + " that begin at " + end
	case run.PullStep:
		return words.Plural(n, "sample", "samples") + " of " + s.Of
	case run.ThreadStep, run.ShrinkStep:
		return words.Plural(n, "part", "parts") + " from " + s.Put.From
	}
	return Step(m, s)
}

// CoverWhere is where a cover lies; "" of a part that is no cover.
func CoverWhere(m *desk.Model, s run.RunStep) string {
	i, ok := m.Sheet.Index.Branch[s.Of]
	if !ok {
		return ""
	}
	return fmt.Sprintf("from %s to %s %s, measured from %s", m.Sys.Length(s.Put.FromMM), m.Sys.Length(s.Put.ToMM), m.Sys.Name(),
		m.H.Branches[i].From)
}

// Size is a size as it is said.
func Size(size string) string { return paper.Size(&model.Wire{Size: size}) }

// Reel is a reel as a person says it: "AS22759/32, 22 AWG".
func Reel(of string) string {
	k := strings.LastIndexByte(of, ' ')
	if k < 0 {
		return of
	}
	return of[:k] + ", " + Size(of[k+1:])
}
