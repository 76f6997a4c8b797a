// Package current is the phase of currents, heat, voltage drop, fuses and pairs.
package current
