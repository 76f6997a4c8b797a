package calc

import "math"

func sqrt(v float64) float64 { return math.Sqrt(math.Max(0, v)) }

func abs(v float64) float64 { return math.Abs(v) }
