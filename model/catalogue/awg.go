package catalogue

import (
	"math"
	"strconv"
	"strings"

	"contralay/model/unit"
)

// AWGNumber reads an AWG size as the number n of the gauge formula
//
//	d(n) = 0.005 in × 92^((36 − n)/39)
//
// in which 0, 00, 000 and 0000 are n = 0, −1, −2, −3 (ASTM B258). "22" is 22,
// "1/0" is 0, "4/0" is −3; the older "00" is read as "2/0". A metric size, or a
// gauge beyond 4/0 … 40, is not one.
func AWGNumber(size string) (n int, ok bool) {
	if zeros, found := strings.CutSuffix(size, "/0"); found {
		if len(zeros) != 1 || zeros[0] < '1' || zeros[0] > '4' {
			return 0, false
		}
		return 1 - int(zeros[0]-'0'), true
	}
	if size != "" && len(size) <= 4 && strings.Trim(size, "0") == "" {
		return 1 - len(size), true
	}
	if len(size) > 2 || size == "" || size[0] < '1' || size[0] > '9' {
		return 0, false
	}
	n, err := strconv.Atoi(size)
	if err != nil || n > 40 {
		return 0, false
	}
	return n, true
}

// CanonicalSize gives the one spelling a wire size is kept under: "00" becomes
// "2/0" and "0.50mm2" becomes "0.5mm2". What it cannot read it returns unchanged.
func CanonicalSize(size string) string {
	size = strings.TrimSpace(size)
	if n, ok := AWGNumber(size); ok {
		if n <= 0 {
			return strconv.Itoa(1-n) + "/0"
		}
		return size
	}
	if v, ok := MetricArea(size); ok {
		return strconv.FormatFloat(float64(v), 'f', -1, 64) + "mm2"
	}
	return size
}

// sameSizeWithin is how far the area of a metric size may be from that of a gauge to be the gauge in
// another unit: 1 % of the gauge's area. Lists write 22 AWG, 0.3255 mm², as 0.324 to 0.326 (the
// design's figure); the next size that is made, 0.35, is 7.5 % more.
const sameSizeWithin = 0.01

// SameSize reports whether two sizes are one: spelled alike, or one an AWG size and the other the same
// area in mm². The area of the gauge is π/4 d², d of the formula at AWGNumber.
func SameSize(a, b string) bool {
	if CanonicalSize(a) == CanonicalSize(b) {
		return true
	}
	for range 2 {
		n, gauge := AWGNumber(strings.TrimSpace(a))
		area, metric := MetricArea(strings.TrimSpace(b))
		if gauge && metric {
			d := 0.127 * math.Pow(92, float64(36-n)/39) // mm
			of := math.Pi / 4 * d * d
			return math.Abs(float64(area)-of) <= sameSizeWithin*of
		}
		a, b = b, a
	}
	return false
}

// MetricArea reads "0.35mm2" as 0.35 mm².
func MetricArea(size string) (area unit.SquareMM, ok bool) {
	num, ok := strings.CutSuffix(size, "mm2")
	if !ok || len(num) > 8 || strings.Trim(num, "0123456789.") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(num, 64)
	return unit.SquareMM(v), err == nil && v > 0
}
