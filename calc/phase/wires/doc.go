// Package wires is the first phase: what each wire and unit is, and which way it runs.
package wires
