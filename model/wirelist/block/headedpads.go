package block

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/padlines"
	"contralay/model/wirelist/point"
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
		if bare, _, _ := padlines.Values(from); bare != "" {
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
		if r.Level > 0 || r.Line < last || isAside(text) || len(strings.Fields(text)) > mostPlug ||
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
