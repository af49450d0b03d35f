#pragma once

#include <QString>

#include <functional>
#include <vector>

namespace rig {

enum class ScaleKind { Millimetres, Riggings, Dates };

struct Tick
{
    double value = 0;
    QString text;
};

// One axis: which value lies at which pixel, and where its ticks stand. Dates are UTC seconds; their ticks
// stand at UTC midnight, which no axis of a day or more can tell from a local one.
class Scale
{
public:
    Scale() = default;
    Scale(ScaleKind kind, double from, double to, double atFrom, double atTo);

    double from() const { return m_from; }
    double to() const { return m_to; }
    double at(double value) const { return m_atFrom + (value - m_from) * m_pixels; }
    double valueAt(double pixel) const { return m_from + (pixel - m_atFrom) / m_pixels; }
    double pixelsPerUnit() const { return m_pixels; }
    bool contains(double value) const { return value >= m_from && value <= m_to; }

    // The finest pleasant steps whose words, as long as `extent` measures them along the axis, keep `apart`
    // pixels between them.
    std::vector<Tick> ticks(const std::function<double(const QString&)>& extent, double apart) const;

private:
    std::vector<Tick> stepped(double step) const;
    std::vector<Tick> dayTicks(int days) const;
    std::vector<Tick> monthTicks(int months) const;
    std::vector<std::vector<Tick>> choices() const;
    double roughSteps(double step) const { return (m_to - m_from) / step; }

    ScaleKind m_kind = ScaleKind::Millimetres;
    double m_from = 0;
    double m_to = 1;
    double m_atFrom = 0;
    double m_pixels = 1;
};

} // namespace rig
