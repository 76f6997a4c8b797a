package crimp

import "contralay/model/unit"

// Source is where a value comes from; one from memory was not read there.
type Source struct {
	Text   string
	Memory bool
}

// Gap is how far insulation may stand off the barrel after crimping: 0.25 to 0.75 mm
// for 20 AWG and finer, to 1.25 mm for 18 AWG and coarser. Source: NASA-STD-8739.4,
// § 10.1.7 b, p. 53.
func Gap(awg int) (least, most unit.Millimetre) {
	if awg >= 20 {
		return 0.25, 0.75
	}
	return 0.25, 1.25
}

// Strip is how much insulation comes off for a well of a depth: depth and gap.
func Strip(well unit.Millimetre, awg int) (least, most unit.Millimetre, ok bool) {
	if !(well > 0) || awg < -3 || awg > 40 {
		return 0, 0, false
	}
	a, b := Gap(awg)
	return well + a, well + b, true
}

// newtonPerPound is exact: 0.45359237 kg × 9.80665 m/s².
const newtonPerPound = 4.4482216152605

// pull is one row of the pull test: least force in lbf for a size, 0 where none is known.
type pull struct {
	awg                                   int
	contact, nickel, terminal, commercial float64
}

// pulls. Machined contacts, on silver- or tin-plated wire and on nickel-plated: WHMA-A-620B table
// 19-12, quoted in a crimp tensile report; 10 and 8 AWG of AS39029, from memory. Terminals:
// MIL-T-7928E, quoted in an aviation course file, and AS7928 in a crimp application
// specification, which agree. The rest: UL 486A, which IPC/WHMA-A-620 uses, in that specification
// and from 8 AWG on in a terminal maker's table.
var pulls = [...]pull{
	{28, 3, 2, 0, 2}, {26, 5, 3, 7, 3}, {24, 8, 6, 10, 5}, {22, 12, 8, 15, 8}, {20, 20, 19, 19, 13}, {18, 32, 0, 38, 20},
	{16, 50, 37, 50, 30}, {14, 70, 60, 70, 50}, {12, 110, 100, 110, 70}, {10, 150, 0, 150, 80}, {8, 220, 0, 225, 90},
	{6, 0, 0, 300, 100}, {4, 0, 0, 400, 140}, {2, 0, 0, 0, 180}, {0, 0, 0, 0, 250}, {-1, 0, 0, 0, 300},
}

// thinnestRemembered is the size from which on the contacts' forces are from memory.
const thinnestRemembered = 10

// Pull is the least force a sample must hold, in N, for a crimp of a kind on a conductor of a
// size, with the document that says so. nickel is true of nickel-plated wire, which holds less in
// a machined contact; where nothing is printed for it, 18 AWG, the higher force of other wire
// stands. The quotation calls that column nickel-plated and does not say what: that the wire is
// meant is from memory of AS39029.
func Pull(k Kind, awg int, nickel bool) (unit.Newton, Source, bool) {
	for _, p := range pulls {
		if p.awg != awg {
			continue
		}
		pounds, from := p.commercial, Source{"UL 486A, IPC/WHMA-A-620, as a crimp specification gives them", false}
		if awg <= 8 {
			from.Text = "UL 486A, IPC/WHMA-A-620, as a terminal maker's table gives them"
		}
		switch k {
		case Contact:
			pounds, from = p.contact, Source{"WHMA-A-620B table 19-12, quoted second hand", false}
			if awg <= thinnestRemembered {
				from = Source{"AS39029", true}
			}
			if nickel && p.nickel > 0 {
				pounds, from.Text = p.nickel, "WHMA-A-620B table 19-12, nickel plated, quoted second hand"
			}
		case Terminal:
			pounds, from = p.terminal, Source{"MIL-T-7928E, quoted second hand", false}
		}
		return unit.Newton(pounds * newtonPerPound), from, pounds > 0
	}
	return 0, Source{}, false
}

// Kind is what is crimped.
type Kind int

// The kinds.
const (
	Contact    Kind = iota // AS39029, in a circular connector
	Terminal               // AS7928 terminals and splices
	Commercial             // everything else
)

// Tool is a frame and what goes into it for a contact size.
type Tool struct {
	Frame, Positioner string
	Source
}

// ToolFor is the tool for a contact size and gender ("pin", "socket"). Frames: ECSS
// crimping course slides; 22D positioners likewise; the rest from memory.
func ToolFor(size, gender string) (Tool, bool) {
	memory := Source{"M22520 positioners", true}
	switch size {
	case "22D", "22M", "22":
		if gender == "socket" {
			return Tool{"M22520/2-01", "M22520/2-07", memory}, true
		}
		return Tool{"M22520/2-01", "M22520/2-09", memory}, true
	case "20":
		return Tool{"M22520/2-01", "M22520/2-10", memory}, true
	case "16", "12":
		return Tool{"M22520/1-01", "M22520/1-04", memory}, true
	}
	return Tool{}, false
}

// Setting is the depth step of a frame for a conductor: 22 AWG at 3 of M22520/1-01 is
// published (an aircraft mechanics' page); its other steps fit that point and are from
// memory, those of M22520/2-01 weakly so: the positioner's plate rules.
func Setting(frame string, awg int) (step int, memory, ok bool) {
	var steps map[int]int
	switch frame {
	case "M22520/1-01":
		steps = map[int]int{26: 1, 24: 2, 22: 3, 20: 4, 18: 5, 16: 6, 14: 7, 12: 8}
	case "M22520/2-01":
		steps = map[int]int{20: 7, 22: 6, 24: 5, 26: 4, 28: 3}
	}
	step, ok = steps[awg]
	return step, frame != "M22520/1-01" || awg != 22, ok
}

// Insertion is the insertion and removal tool for a contact size; read in a secondary
// source.
func Insertion(size string) (string, bool) {
	t, ok := map[string]string{"22D": "M81969/14-01", "20": "M81969/14-10", "16": "M81969/14-03", "12": "M81969/14-04"}[size]
	return t, ok
}

// Damage is how many strands may be nicked and broken. Source: AC 43.13-1B table 11-13,
// p. 11-62.
func Damage(awg int) (nicked, broken int, ok bool) {
	switch {
	case awg >= 14 && awg <= 24:
		return 2, 0, true
	case awg >= 10 && awg < 14:
		return 4, 0, true
	case awg >= -3 && awg <= 8:
		return 6, 6, true
	}
	return 0, 0, false
}
