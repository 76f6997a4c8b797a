// Package question is a planning question as a person types it, 32x22 4x20 2x2.9mm, and its answer
// as a page of text or as JSON: the lay-ups worth having, and what one wire more or fewer costs.
package question
