package schema

import "math"

// bound is what a number may be.
type bound int

const (
	length  bound = iota // a length or diameter in mm: 0 or more
	someMM               // a length in mm that cannot be 0
	amperes              // 0 or more
	volts                // 0 or more
	celsius              // from absolute zero
	degrees              // 0 or more
	seconds              // 0 or more
	metres               // 0 or more
	grams                // more than 0
	leaving              // degrees to the right (-) or left (+), as a branch may leave a breakout
	turning              // degrees to the right (-) or left (+), as a branch may turn on its way
	ratio                // a pure number, 0 or more
)

// absoluteZero in °C, exact by definition of the Celsius scale (SI Brochure, 9th
// edition, 2.3.1). Below it nothing can be represented.
const absoluteZero = -273.15

// largest is the largest number of any kind: far beyond every harness, and small
// enough that no product of a few of them leaves the range of a float.
const largest = 1e9

func (b bound) holds(v float64) bool {
	if v > largest {
		return false
	}
	switch b {
	case someMM, grams:
		return v > 0
	case celsius:
		return v >= absoluteZero
	case leaving:
		return v >= -170 && v <= 170
	case turning:
		return v >= -180 && v <= 180
	}
	return v >= 0
}

// says is what is allowed; the upper end is named only to one who passed it.
func (b bound) says(v float64) string {
	if v > largest && !math.IsInf(v, 0) {
		return b.least() + ", at most 1000000000"
	}
	return b.least()
}

func (b bound) least() string {
	switch b {
	case length:
		return "a number in mm, 0 or more"
	case someMM:
		return "a number in mm, more than 0"
	case amperes:
		return "a number in A, 0 or more"
	case volts:
		return "a number in V, 0 or more"
	case celsius:
		return "a number in °C, -273.15 or more"
	case seconds:
		return "a number in s, 0 or more"
	case metres:
		return "a number in m, 0 or more"
	case grams:
		return "a number in g, more than 0"
	case degrees:
		return "a number in degrees, 0 or more"
	case leaving:
		return "a number in degrees, -170 to 170"
	case turning:
		return "a number in degrees, -180 to 180"
	}
	return "a number, 0 or more"
}

// unit is what stands behind the number; "" of a pure one.
func (b bound) unit() string {
	switch b {
	case length, someMM:
		return "mm"
	case amperes:
		return "A"
	case volts:
		return "V"
	case celsius:
		return "°C"
	case seconds:
		return "s"
	case metres:
		return "m"
	case grams:
		return "g"
	case degrees, leaving, turning:
		return "degrees"
	}
	return ""
}
