package calc_test

import (
	"math"
	"reflect"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/crimp"
	"contralay/calc/formula/cut"
	"contralay/calc/formula/derate"
	"contralay/calc/formula/label"
	"contralay/calc/formula/lay"
	"contralay/calc/formula/learn"
	"contralay/calc/formula/loop"
	"contralay/calc/formula/pair"
	"contralay/calc/formula/protect"
	"contralay/calc/formula/shield"
	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

// A formula that refuses says so, and gives nothing beside it: whoever forgets to ask gets no figure that looks like one.
func TestRefusedIsNothing(t *testing.T) {
	all := func(v ...any) []any { return v }
	nan := unit.Millimetre(math.NaN())
	tube := cover.Tube{SuppliedMM: 9.5, RecoveredMM: 4.8, WallMM: 0.8, Density: 1.3}
	for name, got := range map[string][]any{
		"cover.Window of no tube":           all(cover.Window(cover.Tube{})),
		"cover.Judge of no tube":            all(cover.Judge(cover.Tube{}, cover.Bundle{}, cover.Pass{}, 0)),
		"cover.Judge of no bundle":          all(cover.Judge(tube, cover.Bundle{}, cover.Pass{}, 100)),
		"cover.CutLength below nothing":     all(cover.CutLength(-1, 0.1, 10)),
		"cover.CutLength that vanishes":     all(cover.CutLength(100, 1, 10)),
		"cover.RecoveredOverAt of no tube":  all(cover.RecoveredOverAt(cover.Tube{}, 5, 0.5)),
		"cover.RecoveredOverAt on less":     all(cover.RecoveredOverAt(tube, -1, 0.5)),
		"cover.Wall of no tube":             all(cover.Wall(cover.Tube{}, 5)),
		"cover.Mass of no tube":             all(cover.Mass(cover.Tube{})),
		"crimp.Strip of no well":            all(crimp.Strip(0, 22)),
		"crimp.Pull of no size":             all(crimp.Pull(0, 99, false)),
		"crimp.ToolFor nothing":             all(crimp.ToolFor("none", "pin")),
		"crimp.Damage of a cable":           all(crimp.Damage(99)),
		"cut.Of a loss below one":           all(cut.Of(cut.Wire{Pieces: []cut.Piece{{LengthMM: 1, LaidMM: 1, Loss: 0.9}}})),
		"cut.Of a unit that loses":          all(cut.Of(cut.Wire{InUnit: true, UnitLoss: 0.9})),
		"cut.Of a loop below nothing":       all(cut.Of(cut.Wire{From: cut.End{LoopMM: -1}})),
		"cut.Of less than its splice takes": all(cut.Of(cut.Wire{OffsetMM: -1})),
		"cut.LaidLength below nothing":      all(cut.LaidLength(-1, nil, 1)),
		"cut.LaidLength of no zone":         all(cut.LaidLength(100, []unit.Millimetre{nan}, 1)),
		"cut.Turns of no lay":               all(cut.Turns(100, 0)),
		"derate.SizeOf nothing":             all(derate.SizeOf("none", 0)),
		"derate.Table of a size it has not": all(derate.Table(derate.Size{}, 150, 7, 70)),
		"label.For a barrel":                all(label.For(1000)),
		"lay.TouchRadius of one":            all(lay.TouchRadius(1, 1, 12)),
		"lay.TouchRadius too steep":         all(lay.TouchRadius(6, 1, 1)),
		"learn.Grubbs of two":               all(learn.Grubbs(2)),
		"learn.Student of nothing":          all(learn.Student(0.95, 0)),
		"loop.Fit without room":             all(loop.Fit(100, 50, 0, 5)),
		"pair.At a rate above all":          all(pair.At(2000)),
		"pair.Permittivity of wool":         all(pair.Permittivity("wool")),
		"pair.Impedance of no wire":         all(pair.Impedance(0, 0, 10, 2, false)),
		"protect.Withstand of no copper":    all(protect.Withstand(0, 20, 150)),
		"protect.Withstand of no rise":      all(protect.Withstand(1, 150, 150)),
		"shield.Sleeve of a barrel":         all(shield.Sleeve(1000)),
		"shield.Sleeve of nothing":          all(shield.Sleeve(-1)),
		"wire.Rounded of no gauge":          all(wire.AWG(999).Rounded()),
		"wire.IdealResistance of no copper": all(wire.IdealResistance(0)),
		"wire.ResistanceAt absolute nought": all(wire.ResistanceAt(10, -300)),
		"wire.EquivalentLength at nought":   all(wire.EquivalentLength(1000, -300)),
		"wire.Drop of no length":            all(wire.Drop(1, 10, 20, -1)),
		"wire.MakeUp of one":                all(wire.MakeUp([]unit.Millimetre{1}, false)),
		"wire.MakeUp of nothing":            all(wire.MakeUp([]unit.Millimetre{1, -1}, false)),
		"wire.LayLoss of no lay":            all(wire.LayLoss(1, 0)),
		"wire.EstimateMass inside out":      all(wire.EstimateMass(1, 3, 2, 1.7)),
		"wire.StrandedArea of no strand":    all(wire.StrandedArea(0, 0.2)),
		"wire.StrandedAreaAWG of no gauge":  all(wire.StrandedAreaAWG(19, wire.AWG(999))),
	} {
		last := len(got) - 1
		if got[last] != false {
			t.Errorf("%s is not refused: %v", name, got)
		}
		for _, v := range got[:last] {
			if !reflect.ValueOf(v).IsZero() {
				t.Errorf("%s is refused and gives %v", name, v)
			}
		}
	}
}
