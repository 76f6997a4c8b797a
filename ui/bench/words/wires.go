package words

import (
	"strconv"
)

func OrDash(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

func Trim(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
