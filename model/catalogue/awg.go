package catalogue

import (
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

// MetricArea reads "0.35mm2" as 0.35 mm².
func MetricArea(size string) (area unit.SquareMM, ok bool) {
	num, ok := strings.CutSuffix(size, "mm2")
	if !ok || len(num) > 8 || strings.Trim(num, "0123456789.") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(num, 64)
	return unit.SquareMM(v), err == nil && v > 0
}
