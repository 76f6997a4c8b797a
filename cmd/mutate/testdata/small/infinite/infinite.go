// Package infinite has the numbers that math.Inf is called with, and others that are like them.
package infinite

import (
	"math"
	. "math"
)

func above() float64 { return math.Inf(1) }

func below() float64 { return math.Inf(-1) }

func alone() float64 { return Inf(-1) }

func between(v float64) bool { return v < math.Inf(0) && v > math.Inf(-2) }

// One more than minus nought is minus one.
func nought() float64 { return math.Inf(-0) }

func by(n int) float64 { return math.Inf(n - 1) }

func isAbove(v float64) bool { return math.IsInf(v, 0) }

func sum() float64 { return math.Inf(3) + 4 }

type own struct{}

func (own) Inf(n int) int { return n }

func notMath(math own) int { return math.Inf(5) }
