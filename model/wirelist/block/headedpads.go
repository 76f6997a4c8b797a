package block

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// A list of both ends often has a heading for each device, and in its lines the pads of it alone on the one side.
//
//	### Gauge
//	- VCC -> Hub pin 1
//	- OUT -> Hub pin 12 (IN3)

// headedSides are the devices of those sides of some runs that are pads alone: the heading above names the one of them; "" for
// a side whose ends name their device, and where no heading does. That heading is no title any more.
func (f *finder) headedSides(b *Block, points []table.Row) (near, far string) {
	var all []arrow.Ends
	for _, r := range points {
		from, to, _ := f.run(r)
		if bare, _, _ := padValues(from); bare != "" {
			from = bare
		}
		all = append(all, arrow.Ends{From: from, To: to})
	}
	onNear, onFar := arrow.PadSides(all)
	onNear = onNear || areColours(all)
	if !onNear && !onFar {
		return "", ""
	}
	line, device := f.headed(b.Titles, points[0].Line)
	b.Titles = slices.DeleteFunc(slices.Clone(b.Titles), func(r table.Row) bool { return r.Line == line })
	switch {
	case !onNear:
		return "", device
	case onFar && device != "":
		return device, f.toDevice(points[0].Line)
	}
	return device, ""
}

// areColours reports whether the near ends of some runs are the colours of wires, each once: "red -> Hub 5V" below the heading of a plug.
func areColours(all []arrow.Ends) bool {
	seen := map[string]bool{}
	for _, e := range all {
		if f := table.Fold(e.From); len(f) < 3 || !point.IsColour(e.From) || seen[f] {
			return false
		}
		seen[table.Fold(e.From)] = true
	}
	return len(all) > 1
}

// toDevice is the device that the last text before a line says all is taken to.
func (f *finder) toDevice(line int) (device string) {
	for _, r := range f.t.Rows[:min(len(f.t.Rows), column.MostLooked)] {
		if r.Line >= line {
			break
		}
		if len(r.Cells) == 1 {
			device = cmp.Or(arrow.ToDevice(r.Cells[0]), device)
		}
	}
	return device
}

// headed is the device that the nearest line above names, and that line: a short one with a colon behind it, or right above the first
// point, below the last heading; else a heading.
func (f *finder) headed(titles []table.Row, first int) (line int, device string) {
	last := 0
	if n := len(f.path); n > 0 {
		last = f.path[n-1].Line
	}
	for _, r := range slices.Backward(titles) {
		_, text := r.Filled()
		if r.Level > 0 || r.Line < last || len(strings.Fields(text)) > mostPlug ||
			!strings.HasSuffix(text, ":") && (r.Line+1 != first || strings.ContainsAny(strings.TrimLeft(text, "0123456789."), ".,!?>")) {
			continue
		}
		if device := arrow.HeadedDevice(text); device != "" {
			return r.Line, device
		}
	}
	for _, r := range slices.Backward(f.path) {
		_, text := r.Filled()
		if device := arrow.HeadedDevice(text); device != "" {
			return r.Line, device
		}
	}
	return 0, ""
}

// padValues parts the colour and the size in brackets off a pad, "VCC (red)".
func padValues(end string) (bare, colour, size string) {
	if len(end) > 2 && point.IsColour(end) { // "W" is a phase of a motor
		return "", end, ""
	}
	front, values := point.ValuesBehind(end)
	if front == "" || !strings.HasSuffix(end, ")") {
		return end, "", ""
	}
	for _, v := range values {
		if point.IsColourOrLetters(v) {
			colour = v
		} else {
			size = v
		}
	}
	return front, colour, size
}

// farDevices counts the far ends of some points by all of their words but the last.
func (f *finder) farDevices(points []table.Row) map[string]int {
	n := map[string]int{}
	for _, r := range points {
		_, to, _ := f.run(r)
		to, _ = arrow.RemarkBehind(to, false)
		if at := strings.LastIndexByte(to, ' '); at > 0 {
			n[to[:at]]++
		}
	}
	return n
}

// padOf parts "Hub 5V" in the device and its pad where another far end is of that device too.
func padOf(end string, devices map[string]int) (device, pad string, ok bool) {
	at := strings.LastIndexByte(end, ' ')
	if at < 0 || devices[end[:at]] < 2 || !name.IsCavity(end[at+1:]) && !arrow.IsPad(end[at+1:]) {
		return "", "", false
	}
	return end[:at], end[at+1:], true
}

// padLines is how many rows from one on are pads and where each is taken, with a colon, a dash or a word between in place of an arrow;
// 0 where they are none. A device must come again among the places, and one of them must have a cavity: "VIN: input 12 V" is a figure.
// Where the places are pads alone, most pads must be known, a supply must be taken to a supply, and others to pads with a number.
//
//   - VCC: Hub 5V          - VCC - 5V
//   - OUT: Hub A3          - GND - GND
func (f *finder) padLines(i int) int {
	if i > 0 && f.isPadLine(i-1) && f.t.Rows[i].Line <= f.t.Rows[i-1].Line+1 {
		return 0
	}
	n, sure, known, alone, supplies, chip := 0, false, 0, 0, 0, 0
	devices := map[string]int{}
	for i+n < len(f.t.Rows) && f.isPadLine(i+n) && (n == 0 || f.t.Rows[i+n].Line <= f.t.Rows[i+n-1].Line+1) {
		pad, far, _ := cutPadLine(f.t.Rows[i+n].Cells[0])
		n++
		if arrow.IsPad(pad) {
			known++
		}
		bare, _ := arrow.RemarkBehind(far, true)
		device, pin, _ := name.SplitEnd(bare)
		if at := strings.LastIndexByte(bare, ' '); pin == "" && at > 0 {
			device, pin = bare[:at], bare[at+1:]
		} else if at < 0 && !runline.IsPlainEnd(bare) {
			alone++
			if pads.IsSupply(pad) && pads.IsSupply(bare) {
				supplies++
			}
			if pads.IsChipPad(bare) || len(bare) > 1 && name.IsCavity(bare) && !arrow.IsPad(bare) {
				chip++
			}
			continue
		}
		sure = sure || name.IsCavity(pin)
		devices[table.Fold(device)]++
	}
	again := 0
	for _, k := range devices {
		again = max(again, k)
	}
	switch {
	case alone > 0 && alone == n && n > 2 && supplies > 0 && 3*chip >= n && 2*known > n:
		return n
	case alone > 0 || n < 2 || !sure || known == 0 || 2*again < n || again < 2:
		return 0
	}
	return n
}

// isPadLine reports whether a row is one such line.
func (f *finder) isPadLine(i int) bool {
	r := f.t.Rows[i]
	if len(r.Cells) != 1 || f.t.Marked && !r.Prose || r.Level > 0 || len(r.Cells[0]) > 2*mostHead {
		return false
	}
	_, _, ok := cutPadLine(r.Cells[0])
	return ok
}

// cutPadLine parts "VCC: Hub 5V", "SDA to Hub pin 3", "VCC goes to Hub 5V", "SDA - A4" in the pad and its far end.
func cutPadLine(text string) (pad, far string, ok bool) {
	for _, mark := range []string{": ", " = ", " – ", " - ", " goes to ", " to ", " connects to ", " an ", " nach ", " vers ", " naar ",
		" al ", " a ", " til ", " till ", " do "} {
		front, back, found := strings.Cut(text, mark)
		bare, _, _ := padValues(strings.TrimSpace(front))
		if !found || !arrow.IsPad(bare) && (strings.Trim(mark, " :=-–") != "" || !arrow.IsPadText(bare)) {
			continue
		}
		far = strings.TrimSpace(back)
		end, _ := arrow.RemarkBehind(far, true)
		words := strings.Fields(end)
		if len(words) == 0 || len(words) > mostPlug || len(words) > 1 && strings.Trim(words[0], "0123456789.,") == "" ||
			strings.HasSuffix(far, ".") {
			return "", "", false
		}
		last := words[len(words)-1]
		return strings.TrimSpace(front), far, name.IsCavity(last) || arrow.IsPad(last) || pads.IsChipPad(last)
	}
	return "", "", false
}

// arrowed writes such lines with an arrow.
func arrowed(points []table.Row) []table.Row {
	all := slices.Clone(points)
	for i, r := range all {
		pad, far, _ := cutPadLine(r.Cells[0])
		all[i].Cells = []string{pad + " -> " + far}
	}
	return all
}
