package block

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// A list of both ends often names the two devices once, above it, and in each line their pads alone.
//
//	(gauge)  (hub)        Gauge -> Hub        ## Gauge to hub
//	VCC ---> 5V           VCC -> 5V           - VCC → 5V
//	OUT ---> A3           OUT -> A3           - OUT → A3

// runDevices are the devices of both sides of a list of runs, where most of its ends are pads alone and the line above names
// two; "" where it does not.
func (f *finder) runDevices(titles, points []table.Row) (near, far string) {
	pads := 0
	for _, r := range points {
		from, to, _ := f.run(r)
		if isPad(from) && isPad(to) {
			pads++
		}
	}
	if len(titles) == 0 || 4*pads < 3*len(points) {
		return "", ""
	}
	above := titles[len(titles)-1]
	if len(above.Cells) != 1 || above.Level == 0 && above.Line+3 < points[0].Line {
		return "", ""
	}
	return arrow.DevicesAbove(above)
}

// ownHead reports whether the first of some runs names the devices of the others: it has words, the others have pads in
// capitals and figures.
func (f *finder) ownHead(points []table.Row) (near, far string, ok bool) {
	if len(points) < 3 {
		return "", "", false
	}
	near, far, rest := f.run(points[0])
	apart := !points[0].Point && points[1].Point && !runline.IsPlainEnd(near) && !runline.IsPlainEnd(far) && near != "" && far != ""
	if !apart && (!arrow.IsDeviceName(near) || !arrow.IsDeviceName(far)) || strings.Join(rest, "") != "" {
		return "", "", false
	}
	for _, r := range points[1:] {
		from, to, _ := f.run(r)
		if !isPad(from) || !isPad(to) || arrow.IsDeviceName(from) || arrow.IsDeviceName(to) {
			return "", "", false
		}
	}
	return near, far, true
}

// isPad reports whether an end is one short word, as the pads of boards are called.
func isPad(end string) bool {
	end, _ = arrow.RemarkBehind(end, true)
	return end != "" && len(end) <= 12 && !strings.ContainsAny(end, " :")
}
