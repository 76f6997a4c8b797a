package lay

import "contralay/model/unit"

// mostPlaces bounds the search for room; a layer of more is no hand-made one.
const mostPlaces = 400

// Room is how many more of diameter size a layer still takes within liftMax, all
// laid in zig-zag. d holds what the layer has already.
func Room(d []unit.Millimetre, size unit.Millimetre, bed Bed, how Laying, liftMax unit.Ratio) int {
	if size <= 0 || bed.Tape <= 0 {
		return 0
	}
	all := append([]unit.Millimetre{}, d...)
	for len(all) < mostPlaces {
		all = append(all, size)
		if !Closes(all, bed, how, liftMax) {
			break
		}
	}
	return len(all) - len(d) - 1
}

// Takes is how many components a layer holds at most when its smallest are taken
// out one by one until the rest closes within liftMax.
func Takes(d []unit.Millimetre, bed Bed, how Laying, liftMax unit.Ratio) int {
	order := ZigZag(d)
	up := make([]unit.Millimetre, len(d))
	for i, j := range order {
		up[i] = d[j]
	}
	sortUp(up)
	for len(up) > 0 && !Closes(up, bed, how, liftMax) {
		up = up[1:]
	}
	return len(up)
}

// Closes reports whether components, laid in zig-zag, close with a lift of at
// most liftMax. It is the cheap half of Lay: one sum of angles, no search.
func Closes(d []unit.Millimetre, bed Bed, how Laying, liftMax unit.Ratio) bool {
	if len(d) < 3 {
		return true
	}
	f := newFitter(inZigZag(d), bed, how)
	return f.closesWithin(float64(liftMax))
}

func (f *fitter) closesWithin(liftMax float64) bool {
	const hair = 1e-12
	return f.sum(f.b/2+liftMax*f.mean) <= twoPi+hair
}

func inZigZag(d []unit.Millimetre) []unit.Millimetre {
	out := make([]unit.Millimetre, len(d))
	for i, j := range ZigZag(d) {
		out[i] = d[j]
	}
	return out
}

// LayZigZag is Lay in the order of ZigZag.
func LayZigZag(d []unit.Millimetre, bed Bed, how Laying) Ring { return Lay(inZigZag(d), bed, how) }
