#include "app/pictures/band_bar.h"

#include "app/pictures/lettering.h"
#include "app/wording/picture_words.h"

#include <algorithm>

namespace rig {

namespace {

constexpr double kBandFrom = 0.25; // of the bar's width
constexpr double kBandTo = 0.75;
constexpr double kLeastReading = 4; // pixels

class BandBar
{
public:
    BandBar(const BandBarView& view, QSizeF size, const FontSizes& fonts) : m_view{view}, m_letters{fonts}
    {
        const double height = std::min(size.height() - 2, 20 * fonts.scale);
        m_picture.bar = {1, (size.height() - height) / 2, size.width() - 2, height};
        m_picture.inWords = PictureWords::bandBar(view);
    }

    BandBarPicture make()
    {
        if (!m_view.band) {
            addOutline();
            return std::move(m_picture);
        }
        addBand(*m_view.band);
        if (m_view.reading)
            addReading(*m_view.reading);
        return std::move(m_picture);
    }

private:
    // Unclamped: what lies beyond the bar is beyond it.
    double at(double mm) const
    {
        const BandEdges& inner = m_view.band->inner;
        const double width = std::max(inner.upper - inner.lower, 1e-6);
        const double share = kBandFrom + (kBandTo - kBandFrom) * (mm - inner.lower) / width;
        return m_picture.bar.left() + share * m_picture.bar.width();
    }

    QRectF between(double from, double to) const
    {
        const QRectF& bar = m_picture.bar;
        return QRectF{QPointF{at(from), bar.top()}, QPointF{at(to), bar.bottom()}}.intersected(bar);
    }

    void addBand(const Band& band)
    {
        m_picture.band = between(band.inner.lower, band.inner.upper);
        m_picture.boxes.push_back({m_picture.bar, Role::StripGround});
        m_picture.boxes.push_back({between(band.outer.lower, band.inner.lower), Role::NearZone});
        m_picture.boxes.push_back({between(band.inner.upper, band.outer.upper), Role::NearZone});
        m_picture.boxes.push_back({m_picture.band, Role::Band});
        addEdge(band.outer.lower, Role::NearEdge);
        addEdge(band.outer.upper, Role::NearEdge);
        addEdge(band.inner.lower, Role::Centre);
        addEdge(band.inner.upper, Role::Centre);
        const double middle = at(band.median);
        m_picture.lines.push_back({{middle, m_picture.bar.top()},
                                   {middle, m_picture.bar.bottom()},
                                   Role::Centre,
                                   1.4 * m_letters.scale()});
    }

    // Band and near zone are told apart by a line, not by tint alone.
    void addEdge(double mm, Role role)
    {
        const double x = at(mm);
        if (x >= m_picture.bar.left() && x <= m_picture.bar.right())
            m_picture.lines.push_back({{x, m_picture.bar.top()}, {x, m_picture.bar.bottom()}, role, 1});
    }

    void addReading(const GapInterval& reading)
    {
        const QRectF& bar = m_picture.bar;
        const Verdict verdict = m_view.verdict.value_or(Verdict::Inside);
        const Role role = verdict == Verdict::Inside ? Role::Ink : shapeRoleOf(verdict);
        const double low = at(reading.enters.inMillimetres());
        const double high = reading.refuses ? at(reading.refuses->inMillimetres()) : low + 3 * kLeastReading;
        const double widened = std::max(high, low + kLeastReading);
        const double left = std::clamp(low, bar.left(), bar.right() - kLeastReading);
        const double right = std::clamp(widened, bar.left() + kLeastReading, bar.right());
        const double thick = 5 * m_letters.scale();
        m_picture.bars.push_back({{left, bar.center().y() - thick / 2, right - left, thick}, role});
        const double arrow = std::min(bar.height() * 0.7, 11 * m_letters.scale());
        if (low < bar.left())
            m_picture.arrows.push_back({{bar.left(), bar.center().y()}, false, arrow, role, true});
        if (reading.isOpen() || high > bar.right())
            m_picture.arrows.push_back(
                {{std::min(right + arrow * 0.7, bar.right()), bar.center().y()}, true, arrow, role, true});
    }

    void addOutline()
    {
        const QRectF& bar = m_picture.bar;
        for (const auto& [from, to] : {std::pair{bar.topLeft(), bar.topRight()},
                                       {bar.bottomLeft(), bar.bottomRight()},
                                       {bar.topLeft(), bar.bottomLeft()},
                                       {bar.topRight(), bar.bottomRight()}})
            m_picture.lines.push_back({from, to, Role::Unknown, 1, true});
        const QString words = m_view.hasGap ? PictureWords::noBandLegend() : PictureWords::noGapLegend();
        if (m_letters.widthOf(words) <= bar.width() - 8 && m_letters.line() <= bar.height() + 2)
            m_picture.labels.push_back(m_letters.label(
                {bar.left() + 4, bar.center().y() - m_letters.line() / 2, bar.width() - 8, m_letters.line()},
                words, Qt::AlignHCenter));
    }

    const BandBarView& m_view;
    Lettering m_letters;
    BandBarPicture m_picture;
};

} // namespace

BandBarPicture layoutBandBar(const BandBarView& view, QSizeF size, const FontSizes& fonts)
{
    return BandBar{view, size, fonts}.make();
}

} // namespace rig
