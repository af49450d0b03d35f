#include "app/pictures/offsets.h"

#include "app/pictures/lettering.h"
#include "app/pictures/scale.h"
#include "app/wording/picture_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kLeastReach = 0.03; // mm either side of zero: less makes nothing look like much

double rowHeight(const Lettering& letters)
{
    return letters.line() + 12 * letters.scale();
}

double footHeight(const Lettering& letters)
{
    return letters.line() + 8;
}

class Offsets
{
public:
    Offsets(const std::vector<OffsetRow>& rows, QSizeF size, const FontSizes& fonts)
        : m_rows{rows}, m_size{size}, m_letters{fonts}
    {
    }

    OffsetsPicture make()
    {
        m_picture.inWords = PictureWords::offsets(m_rows);
        if (m_rows.empty()) {
            m_picture.labels.push_back(m_letters.sentence(m_size, m_picture.inWords));
            return std::move(m_picture);
        }
        divide();
        chooseScale();
        addScale();
        addHeads();
        for (std::size_t i = 0; i < m_rows.size(); ++i)
            addRow(m_rows[i], m_picture.plot.top() + (static_cast<double>(i) + 0.5) * m_each);
        return std::move(m_picture);
    }

private:
    void divide()
    {
        double names = 0;
        double counts = 0;
        for (const OffsetRow& row : m_rows) {
            names = std::max(names, m_letters.widthOf(QString::fromStdString(row.name), true));
            counts = std::max(counts, m_letters.widthOf(PictureWords::readings(row.readings)));
            if (row.spread)
                m_figures = std::max(m_figures, m_letters.widthOf(PictureWords::spread(*row.spread)));
        }
        if (m_figures > 0)
            m_figures = std::max(m_figures, m_letters.widthOf(PictureWords::spreadHead()));
        m_names = std::min(names, m_size.width() * 0.34);
        m_counts = m_names + m_gap + counts <= m_size.width() * 0.42 ? counts : 0;
        const double left = 2 + m_names + m_gap + (m_counts > 0 ? m_counts + m_gap : 0);
        const double right = m_size.width() - 2 - (m_figures > 0 ? m_figures + m_gap : 8 * m_letters.scale());
        const double top = m_letters.line() + 4;
        m_picture.plot = {left, top, right - left, m_size.height() - top - footHeight(m_letters)};
        m_each = std::min(m_picture.plot.height() / static_cast<double>(m_rows.size()),
                          1.6 * rowHeight(m_letters));
        m_picture.plot.setHeight(m_each * static_cast<double>(m_rows.size()));
    }

    void chooseScale()
    {
        double reach = kLeastReach;
        for (const OffsetRow& row : m_rows)
            for (const std::optional<double>& end : {row.offset, row.lower, row.upper})
                if (row.offset && end)
                    reach = std::max(reach, std::abs(*end));
        m_picture.mmAtRight = reach * 1.12;
        m_picture.mmAtLeft = -m_picture.mmAtRight;
    }

    double at(double mm) const
    {
        const QRectF& plot = m_picture.plot;
        return Scale{ScaleKind::Millimetres, m_picture.mmAtLeft, m_picture.mmAtRight, plot.left(),
                     plot.right()}
            .at(mm);
    }

    void addScale()
    {
        const QRectF& plot = m_picture.plot;
        const Scale scale{ScaleKind::Millimetres, m_picture.mmAtLeft, m_picture.mmAtRight, plot.left(),
                          plot.right()};
        const auto extent = [this](const QString&) {
            return m_letters.widthOf(PictureWords::signedMillimetres(-0.01));
        };
        m_picture.lines.push_back({plot.bottomLeft(), plot.bottomRight(), Role::Line, 1});
        for (const Tick& tick : scale.ticks(extent, m_letters.line())) {
            const double x = scale.at(tick.value);
            const QString text = PictureWords::signedMillimetres(tick.value);
            const double width = m_letters.widthOf(text);
            m_picture.lines.push_back({{x, plot.bottom()}, {x, plot.bottom() + 4}, Role::InkSoft, 1});
            m_picture.labels.push_back(m_letters.label(
                {x - width / 2, plot.bottom() + 6, width, m_letters.line()}, text, Qt::AlignHCenter));
        }
        const QString unit = PictureWords::millimetre();
        const double width = m_letters.widthOf(unit);
        m_picture.labels.push_back(m_letters.label(
            {plot.left() - m_gap - width, plot.bottom() + 6, width, m_letters.line()}, unit, Qt::AlignRight));
    }

    void addHeads()
    {
        const QRectF& plot = m_picture.plot;
        const QRectF row{plot.left(), 0, plot.width() / 2 - 6, m_letters.line()};
        const QString low = PictureWords::readsLow();
        const QString high = PictureWords::readsHigh();
        if (std::max(m_letters.widthOf(low), m_letters.widthOf(high)) <= row.width()) {
            m_picture.labels.push_back(m_letters.label(row, low, Qt::AlignLeft));
            m_picture.labels.push_back(
                m_letters.label(row.translated(plot.width() / 2 + 6, 0), high, Qt::AlignRight));
        }
        if (m_figures > 0)
            m_picture.labels.push_back(m_letters.label({plot.right() + m_gap, 0, m_figures, m_letters.line()},
                                                       PictureWords::spreadHead(), Qt::AlignRight));
    }

    void addRow(const OffsetRow& row, double middle)
    {
        const QRectF& plot = m_picture.plot;
        const double top = middle - m_letters.line() / 2;
        const QString name = m_letters.fitted(QString::fromStdString(row.name), m_names, row.standsOut);
        m_picture.labels.push_back(m_letters.label({2, top, m_names, m_letters.line()}, name, Qt::AlignLeft,
                                                   Role::Ink, row.standsOut));
        if (m_counts > 0 && row.offset && row.readings > 0)
            m_picture.labels.push_back(m_letters.label({2 + m_names + m_gap, top, m_counts, m_letters.line()},
                                                       PictureWords::readings(row.readings), Qt::AlignRight));
        if (!row.offset)
            return addReason(row, top);
        m_picture.lines.push_back({{plot.left(), middle}, {plot.right(), middle}, Role::Grid, 1});
        m_picture.lines.push_back(
            {{at(0), middle - m_each / 2}, {at(0), middle + m_each / 2}, Role::InkSoft, 1});
        if (row.spread)
            m_picture.labels.push_back(
                m_letters.label({plot.right() + m_gap, top, m_figures, m_letters.line()},
                                PictureWords::spread(*row.spread), Qt::AlignRight, Role::Ink));
        const double thick = 3 * m_letters.scale();
        if (row.lower && row.upper)
            m_picture.bars.push_back(
                {{at(*row.lower), middle - thick / 2, at(*row.upper) - at(*row.lower), thick}, Role::Ink});
        const double side = (row.standsOut ? 13 : 17) * m_letters.scale();
        m_picture.marks.push_back({{at(*row.offset) - side / 2, middle - side / 2, side, side},
                                   row.standsOut ? MarkShape::Triangle : MarkShape::Done,
                                   row.standsOut ? Role::NearEdge : Role::Ink});
        if (row.standsOut)
            addStandsOut(row, top);
    }

    // The word on the other side of zero, where its interval is not.
    void addStandsOut(const OffsetRow& row, double top)
    {
        const QString text = PictureWords::standsOut();
        const double width = m_letters.widthOf(text);
        const double from = *row.offset > 0 ? at(0) - 8 - width : at(0) + 8;
        const double low = at(std::min(row.lower.value_or(*row.offset), *row.offset));
        const double high = at(std::max(row.upper.value_or(*row.offset), *row.offset));
        const bool isClear = from > high || from + width < low;
        if (isClear && from >= m_picture.plot.left() && from + width <= m_picture.plot.right())
            m_picture.labels.push_back(m_letters.label({from, top, width, m_letters.line()}, text,
                                                       Qt::AlignLeft, Role::NearEdgeText));
    }

    void addReason(const OffsetRow& row, double top)
    {
        const double left = m_picture.plot.left();
        const double width = m_size.width() - 2 - left;
        m_picture.labels.push_back(
            m_letters.label({left, top, width, m_letters.line()},
                            m_letters.fitted(QString::fromStdString(row.instead), width), Qt::AlignLeft));
    }

    const std::vector<OffsetRow>& m_rows;
    QSizeF m_size;
    Lettering m_letters;
    OffsetsPicture m_picture;
    double m_gap = 12 * m_letters.scale();
    double m_names = 0;
    double m_counts = 0;
    double m_figures = 0;
    double m_each = 0;
};

} // namespace

double heightOfOffsets(const std::vector<OffsetRow>& rows, const FontSizes& fonts)
{
    const Lettering letters{fonts};
    return letters.line() + 4 + static_cast<double>(rows.size()) * rowHeight(letters) + footHeight(letters);
}

OffsetsPicture layoutOffsets(const std::vector<OffsetRow>& rows, QSizeF size, const FontSizes& fonts)
{
    return Offsets{rows, size, fonts}.make();
}

} // namespace rig
