#include "app/pictures/readings_strip.h"

#include "app/pictures/lettering.h"
#include "app/wording/lesson_picture_words.h"
#include "app/wording/picture_words.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rig {

namespace {

constexpr double kTallestRow = 6;
constexpr double kMarkSide = 11;
constexpr double kLegendApart = 18;

class ReadingsStrip
{
public:
    ReadingsStrip(const ReadingsStripView& view, QSizeF size, const FontSizes& fonts)
        : m_view{view}, m_size{size}, m_letters{fonts}, m_end{stripEnd(view)}
    {
    }

    ReadingsStripPicture make()
    {
        const double top = addLegend() + kMarkSide * m_letters.scale() + 4;
        const double below = m_letters.line() + 10;
        const double side = m_letters.widthOf(QStringLiteral("0.0")) / 2 + 2;
        m_made.strip = {side, top, std::max(40.0, m_size.width() - 2 * side),
                        std::max(16.0, m_size.height() - top - below)};
        m_made.mm = Scale{ScaleKind::Millimetres, 0, m_end, m_made.strip.left(), m_made.strip.right()};
        m_made.boxes.push_back({m_made.strip, Role::StripGround});
        addBand();
        addTicks();
        addNothingBetween();
        addLocked();
        addTall(m_view.partSeated, MarkShape::Diamond, Role::Outside);
        addTall(m_view.asFound, MarkShape::HalfDisc, Role::NearEdge);
        addTall(m_view.notSecured, MarkShape::Triangle, Role::NearEdge);
        m_made.inWords = LessonPictureWords::readingsStrip(m_view);
        return std::move(m_made);
    }

private:
    double at(double mm) const { return m_made.mm.at(std::clamp(mm, 0.0, m_end)); }

    struct Entry
    {
        QString text;
        std::optional<MarkShape> shape;
        Role role = Role::Ink;
    };

    std::vector<Entry> legend() const
    {
        std::vector<Entry> all;
        all.push_back(
            {LessonPictureWords::lockedCount(static_cast<int>(m_view.locked.size())), {}, Role::Ink});
        if (!m_view.partSeated.empty())
            all.push_back({LessonPictureWords::partSeatedCount(static_cast<int>(m_view.partSeated.size())),
                           MarkShape::Diamond, Role::Outside});
        if (!m_view.asFound.empty())
            all.push_back({LessonPictureWords::asFoundCount(static_cast<int>(m_view.asFound.size())),
                           MarkShape::HalfDisc, Role::NearEdge});
        if (!m_view.notSecured.empty())
            all.push_back({LessonPictureWords::notSecuredCount(static_cast<int>(m_view.notSecured.size())),
                           MarkShape::Triangle, Role::NearEdge});
        if (m_view.partSeated.empty() && m_view.asFound.empty())
            all.push_back({LessonPictureWords::neverPartSeated(), MarkShape::DashedRing, Role::Unknown});
        return all;
    }

    // Where it ends below.
    double addLegend()
    {
        const double side = kMarkSide * m_letters.scale();
        double x = 2;
        double y = 0;
        for (const Entry& one : legend()) {
            const double room = m_size.width() - side - 8;
            const QString text = m_letters.fitted(one.text, room, true);
            const double width = side + 6 + m_letters.widthOf(text, true);
            if (x > 2 && x + width > m_size.width()) {
                x = 2;
                y += m_letters.line() + 2;
            }
            const QRectF mark{x, y + (m_letters.line() - side) / 2, side, side};
            if (one.shape)
                m_made.marks.push_back({mark, *one.shape, one.role});
            else
                m_made.bars.push_back(
                    {{mark.left() + 2, mark.center().y() - 2, side - 4, 4 * m_letters.scale()}, Role::Ink});
            m_made.labels.push_back(m_letters.label({x + side + 6, y, width - side - 6, m_letters.line()},
                                                    text, Qt::AlignLeft, Role::Ink, true));
            x += width + kLegendApart;
        }
        return y + m_letters.line();
    }

    void addBand()
    {
        if (!m_view.band)
            return;
        const auto zone = [&](double from, double to, Role role) {
            const QRectF& strip = m_made.strip;
            m_made.boxes.push_back({{at(from), strip.top(), at(to) - at(from), strip.height()}, role});
        };
        const Band& band = *m_view.band;
        zone(band.outer.lower, band.inner.lower, Role::NearZone);
        zone(band.inner.lower, band.inner.upper, Role::Band);
        zone(band.inner.upper, band.outer.upper, Role::NearZone);
        const auto edge = [this](double mm, Role role) { // not by tint alone
            const QRectF& strip = m_made.strip;
            if (mm >= 0 && mm <= m_end)
                m_made.lines.push_back({{at(mm), strip.top()}, {at(mm), strip.bottom()}, role, 1});
        };
        edge(band.outer.lower, Role::NearEdge);
        edge(band.outer.upper, Role::NearEdge);
        edge(band.inner.lower, Role::Centre);
        edge(band.inner.upper, Role::Centre);
    }

    void addTicks()
    {
        const auto extent = [&](const QString& text) { return m_letters.widthOf(text); };
        const double bottom = m_made.strip.bottom();
        for (Tick tick : m_made.mm.ticks(extent, 24 + extent(PictureWords::millimetre()))) {
            if (tick.value == 0) // the unit once, where the scale begins
                tick.text += QLatin1Char(' ') + PictureWords::millimetre();
            const double x = m_made.mm.at(tick.value);
            m_made.lines.push_back({{x, bottom}, {x, bottom + 5}, Role::InkSoft, 1});
            const double width = m_letters.widthOf(tick.text);
            const double left = std::clamp(x - width / 2, 0.0, m_size.width() - width);
            m_made.labels.push_back(
                m_letters.label({left, bottom + 7, width, m_letters.line()}, tick.text, Qt::AlignHCenter));
        }
    }

    void addNothingBetween()
    {
        for (const EmptyStretch& one : emptyBetween(m_view)) {
            const QRectF room{at(one.from) + 8, m_made.strip.center().y() - m_letters.line() / 2,
                              at(one.to) - at(one.from) - 16, m_letters.line()};
            for (const QString& text : LessonPictureWords::nothingBetween()) {
                if (m_letters.widthOf(text) > room.width() || m_letters.line() > m_made.strip.height())
                    continue;
                m_made.labels.push_back(m_letters.label(room, text, Qt::AlignHCenter));
                m_made.saysNothingBetween = true;
                break;
            }
        }
    }

    // Alike ones stand on one another, from the ground up.
    void addLocked()
    {
        std::map<int, int> stacked; // column of pixels -> how many
        std::vector<std::pair<int, int>> placed;
        const double wide = 3 * m_letters.scale();
        int highest = 1;
        for (const GapInterval& one : m_view.locked) {
            if (isOffStrip(one, m_end)) {
                addBeyond(Role::Ink);
                continue;
            }
            const int column = static_cast<int>(std::lround(at(drawnAt(one)) / (wide + 1)));
            const int row = stacked[column]++;
            highest = std::max(highest, row + 1);
            placed.push_back({column, row});
        }
        const QRectF& strip = m_made.strip;
        const double pitch = std::min(kTallestRow * m_letters.scale(), (strip.height() - 4) / highest);
        for (const auto& [column, row] : placed) {
            const double x = std::clamp(column * (wide + 1) - wide / 2, strip.left(), strip.right() - wide);
            const double y = strip.bottom() - 2 - (row + 1) * pitch;
            m_made.bars.push_back({{x, y + pitch * 0.2, wide, std::max(0.8, pitch * 0.8)}, Role::Ink});
        }
    }

    void addTall(const std::vector<GapInterval>& readings, MarkShape shape, Role role)
    {
        const QRectF& strip = m_made.strip;
        const double side = kMarkSide * m_letters.scale();
        for (const GapInterval& one : readings) {
            if (isOffStrip(one, m_end)) {
                addBeyond(role);
                continue;
            }
            const double x = at(drawnAt(one));
            m_made.linesOver.push_back(
                {{x, strip.top()}, {x, strip.bottom() - 3}, role, 3 * m_letters.scale()});
            m_made.marks.push_back({{x - side / 2, strip.top() - side, side, side}, shape, role});
        }
    }

    // Off the scale.
    void addBeyond(Role role)
    {
        const double size = 9 * m_letters.scale();
        m_made.arrows.push_back({{m_made.strip.right(), m_made.strip.center().y()}, true, size, role, true});
    }

    const ReadingsStripView& m_view;
    QSizeF m_size;
    Lettering m_letters;
    double m_end = 1;
    ReadingsStripPicture m_made;
};

} // namespace

ReadingsStripPicture layoutReadingsStrip(const ReadingsStripView& view, QSizeF size, const FontSizes& fonts)
{
    return ReadingsStrip{view, size, fonts}.make();
}

double readingsStripHeight(const FontSizes& fonts)
{
    return 110 * fonts.scale;
}

} // namespace rig
