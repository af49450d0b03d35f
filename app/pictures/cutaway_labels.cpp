#include "app/pictures/cutaway_layout.h"
#include "app/wording/lesson_picture_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kTopUnits = 24.5;    // above the rod's middle: hood and gap's measure
constexpr double kBottomUnits = 20;   // below it
constexpr double kBetweenLabels = 12; // pixels
constexpr double kDot = 2;            // at the end of a leader

// A name that points at something. The first ones go when there is no room for all.
struct Pointer
{
    LessonPoint at;
    QString text;
    int rank = 0; // high: the last to go
    Role role = Role::InkSoft;
};

double widthIn(const Lettering& letters, const std::vector<Pointer>& row)
{
    double width = -kBetweenLabels;
    for (const Pointer& one : row)
        width += letters.widthOf(one.text) + kBetweenLabels;
    return width;
}

// Side by side in the order of what they point at, each as near to it as the others let it.
std::vector<double> spread(const Lettering& letters, const std::vector<Pointer>& row,
                           const CutawayPlace& place, const QRectF& where)
{
    std::vector<double> left(row.size());
    double free = where.left();
    for (std::size_t i = 0; i < row.size(); ++i) {
        left[i] = std::max(free, place.x(row[i].at.x) - letters.widthOf(row[i].text) / 2);
        free = left[i] + letters.widthOf(row[i].text) + kBetweenLabels;
    }
    double end = where.right();
    for (std::size_t i = row.size(); i-- > 0;) {
        left[i] = std::min(left[i], end - letters.widthOf(row[i].text));
        end = left[i] - kBetweenLabels;
    }
    return left;
}

class Labels
{
public:
    Labels(CutawayPicture& picture, const CutawayView& view, const Cutaway& cutaway, const CutawayRows& rows,
           const FontSizes& fonts)
        : m_over{picture.over}, m_view{view}, m_cutaway{cutaway}, m_rows{rows}, m_place{rows.place},
          m_letters{fonts}, m_fonts{fonts}
    {
    }

    void add()
    {
        addTitle();
        if (m_view.withGap)
            addGap();
        if (m_view.withLabels) {
            addAbove();
            addBelow();
        }
        if (m_view.withCaption)
            addCaption();
    }

private:
    void addTitle()
    {
        const double side = m_rows.title.height() * 0.72;
        const QFontMetricsF metrics{fontOf(m_fonts.section(), Weight::SemiBold)};
        const QStringList choices = LessonPictureWords::title(m_cutaway.state);
        const double room = m_rows.title.width() - side - 8;
        QString text = choices.back();
        for (qsizetype i = choices.size(); i-- > 0;)
            if (metrics.horizontalAdvance(choices[i]) + 2 <= room)
                text = choices[i];
        const double width = std::min(room, std::ceil(metrics.horizontalAdvance(text)) + 2);
        const double left = m_rows.title.left() + (room - width) / 2;
        m_over.marks.push_back({{left, m_rows.title.center().y() - side / 2, side, side},
                                shapeOf(m_cutaway.state),
                                shapeRoleOf(m_cutaway.state)});
        DrawnLabel label;
        label.where = {left + side + 8, m_rows.title.top(), width, m_rows.title.height()};
        label.text = text;
        label.role = textRoleOf(m_cutaway.state);
        label.pixels = m_fonts.section();
        label.strong = true;
        label.align = Qt::AlignLeft | Qt::AlignVCenter;
        m_over.labels.push_back(label);
    }

    bool isSchematicGap() const
    {
        return m_cutaway.gap.ground != GapGround::Own && m_cutaway.gap.ground != GapGround::LooksOwn;
    }

    void addGap()
    {
        const CutawayGap& gap = m_cutaway.gap;
        const double sign = gap.above ? -1 : 1;
        const Role role = textRoleOf(m_cutaway.state);
        const double from = m_place.x(gap.from);
        const double to = m_place.x(gap.to);
        const double y = m_place.y(sign * (kSleeveOuter + (gap.above ? 4.5 : 8.5)));
        const double edge = m_place.y(sign * kSleeveBore);
        for (const double x : {from, to})
            m_over.linesOver.push_back({{x, edge}, {x, y + sign * 4}, role, 1.2, true});
        m_over.linesOver.push_back({{from, y}, {to, y}, role, 2, isSchematicGap()});
        for (const double x : {from, to})
            m_over.linesOver.push_back({{x, y - 4}, {x, y + 4}, role, 2});
        const double height = std::ceil(m_fonts.body() * 1.35);
        const double top = gap.above ? m_place.y(-kSleeveOuter) - 3 - height : y - height / 2;
        addFigure({to + 8, top, m_rows.title.right() - to - 8, height}, role);
    }

    void addFigure(const QRectF& room, Role role)
    {
        const QFontMetricsF metrics{fontOf(m_fonts.body(), Weight::SemiBold)};
        for (const QString& text : LessonPictureWords::figure(m_cutaway.gap)) {
            const double width = std::ceil(metrics.horizontalAdvance(text)) + 2;
            if (width > room.width())
                continue;
            DrawnLabel label;
            label.where = {room.left(), room.top(), width, room.height()};
            label.text = text;
            label.role = role;
            label.pixels = m_fonts.body();
            label.strong = true;
            label.align = Qt::AlignLeft | Qt::AlignVCenter;
            m_over.labels.push_back(label);
            m_figure = label.where;
            return;
        }
    }

    std::vector<Pointer> above() const
    {
        std::vector<Pointer> row;
        if (m_cutaway.ball)
            row.push_back({{-5, m_cutaway.ball->y - 6}, LessonPictureWords::ball(), 9});
        else
            row.push_back({{-4, -4}, LessonPictureWords::noBall(), 9, Role::Outside});
        if (m_cutaway.gap.above) {
            row.push_back(hole());
            return row;
        }
        row.push_back(socket(-12));
        row.push_back(plunger());
        addSleeve(row, -1);
        return row;
    }

    LessonPoint holeAt() const
    {
        LessonPoint at = m_cutaway.hole.centre;
        if (m_cutaway.gap.above)
            at.x = std::min(at.x, m_cutaway.cover.front().x + 1);
        return at;
    }

    Pointer hole() const
    {
        return {holeAt(), LessonPictureWords::witnessHole(m_cutaway), 7,
                m_cutaway.holeClear < 1 ? Role::Outside : Role::InkSoft};
    }

    Pointer socket(double y) const
    {
        const double left = m_cutaway.gap.above ? -kSocketRadius - 2.5 : m_cutaway.housing[0].x + 1;
        return {{left, m_cutaway.gap.above ? y : -kHousingHalf + 1.2}, LessonPictureWords::socket(), 5};
    }

    Pointer plunger() const
    {
        const LessonPoint nose = m_cutaway.nose.centre;
        const double along = m_cutaway.gap.above ? 4.0 : -1.0;
        return {{nose.x + along, nose.y}, LessonPictureWords::plunger(), 8};
    }

    void addSleeve(std::vector<Pointer>& row, double side) const
    {
        const CutawaySleeve& sleeve = m_cutaway.sleeve;
        if (!m_cutaway.hasSleeve) {
            row.push_back({{sleeve.stop + 4, side * 10}, LessonPictureWords::collar(), 4});
            return;
        }
        if (sleeve.threadShowing > 0.5)
            row.push_back({{sleeve.stop + sleeve.threadShowing / 2, side * 2},
                           LessonPictureWords::thread(true),
                           6,
                           Role::Outside});
        row.push_back({{sleeve.front + 10, side * 11.2}, LessonPictureWords::sleeve(), 5});
        if (!sleeve.finger.empty())
            row.push_back({{(sleeve.finger.front().x + sleeve.finger[4].x) / 2,
                            (sleeve.finger[0].y + sleeve.finger[4].y) / 2},
                           LessonPictureWords::finger(),
                           4});
        row.push_back(
            {{sleeve.stop + kSleeveLength - kSleeveWall - 1.2, side * 5.5}, LessonPictureWords::stop(), 2});
    }

    std::vector<Pointer> below() const
    {
        std::vector<Pointer> row;
        const Cutaway& made = m_cutaway;
        row.push_back(
            {{(made.spring.from.x + made.spring.to.x) / 2, (made.spring.from.y + made.spring.to.y) / 2},
             LessonPictureWords::spring(),
             3});
        row.push_back({made.tab, LessonPictureWords::tab(made), 6,
                       made.plungerBack >= 0.2 ? Role::Outside : Role::InkSoft});
        if (!made.gap.above) {
            row.push_back(hole());
            return row;
        }
        row.push_back(socket(12));
        row.push_back(plunger());
        addSleeve(row, 1);
        return row;
    }

    // The stem may stand up between the labels.
    bool isInTheStemsWay(const QRectF& box) const
    {
        if (!m_cutaway.ball)
            return false;
        const double y = m_cutaway.ball->y - kBallRadius;
        return m_place.box(-kStemHalf, y - kStemLength, kStemHalf, y).adjusted(-5, 0, 5, 0).intersects(box);
    }

    void addAbove()
    {
        std::vector<Pointer> left;
        std::vector<Pointer> right;
        for (const Pointer& one : above())
            (one.at.x < 0 ? left : right).push_back(one);
        QRectF where = m_rows.above;
        const double away = kStemHalf * m_place.pixels + 6;
        where.setRight(m_place.x(0) - away);
        addRow(left, where, true);
        addRow(right, {QPointF{m_place.x(0) + away, where.top()}, m_rows.above.bottomRight()}, true);
    }

    void addBelow()
    {
        QRectF where = m_rows.below;
        if (!m_cutaway.gap.above) // the gap's figure stands to the right
            where.setRight(std::max(m_place.x(m_cutaway.gap.from), m_place.x(m_cutaway.housingEnd + 4)));
        addRow(below(), where, false);
    }

    void addRow(std::vector<Pointer> row, const QRectF& where, bool isAbove)
    {
        std::ranges::sort(row, {}, [](const Pointer& one) { return one.at.x; });
        while (!row.empty() && widthIn(m_letters, row) > where.width())
            row.erase(std::ranges::min_element(row, {}, &Pointer::rank));
        const std::vector<double> left = spread(m_letters, row, m_place, where);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double width = m_letters.widthOf(row[i].text);
            const QRectF box{left[i], where.top(), width, m_letters.line()};
            if (m_figure.intersects(box) || isInTheStemsWay(box))
                continue;
            m_over.labels.push_back(m_letters.label(box, row[i].text, Qt::AlignHCenter, row[i].role));
            addLeader(box, row[i], isAbove);
        }
    }

    void addLeader(const QRectF& box, const Pointer& pointer, bool isAbove)
    {
        const QPointF tip = m_place.at(pointer.at);
        const double inset = std::min(6.0, box.width() / 2);
        const double start = std::clamp(tip.x(), box.left() + inset, box.right() - inset);
        m_over.linesOver.push_back({{start, isAbove ? box.bottom() : box.top()}, tip, pointer.role, 1});
        m_over.curves.push_back(
            {{}, {tip}, {}, kDot, pointer.role == Role::Outside ? Role::Outside : Role::Ink});
    }

    void addCaption()
    {
        if (m_rows.caption.height() < m_letters.line())
            return;
        DrawnLabel label;
        label.where = m_rows.caption;
        label.text = LessonPictureWords::caption(m_cutaway);
        label.role = Role::Ink;
        label.pixels = m_fonts.label();
        label.wrapped = true;
        label.align = Qt::AlignHCenter | Qt::AlignTop;
        m_over.labels.push_back(label);
    }

    Drawing& m_over;
    const CutawayView& m_view;
    const Cutaway& m_cutaway;
    const CutawayRows& m_rows;
    const CutawayPlace& m_place;
    Lettering m_letters;
    FontSizes m_fonts;
    QRectF m_figure;
};

// As high as the longest caption of this coupling, so that nothing moves with the slider.
double captionHeight(const CutawayView& view, double width, const FontSizes& fonts)
{
    const QFontMetricsF metrics{fontOf(fonts.label())};
    double height = 0;
    for (const JointState state :
         {JointState::Locked, JointState::PartSeated, JointState::NotSecured, JointState::NotConnected}) {
        const QString text = LessonPictureWords::caption(cutawayOf(view.joint, poseOf(state)));
        const QRectF room{0, 0, width, 10000};
        height = std::max(height, metrics.boundingRect(room, Qt::TextWordWrap, text).height());
    }
    return std::ceil(height) + 2;
}

} // namespace

CutawayRows rowsOf(const CutawayView& view, const Cutaway& cutaway, QSizeF size, const FontSizes& fonts)
{
    const Lettering letters{fonts};
    constexpr double kMargin = 6;
    CutawayRows rows;
    const double width = std::max(40.0, size.width() - 2 * kMargin);
    const double title = std::ceil(QFontMetricsF{fontOf(fonts.section(), Weight::SemiBold)}.height()) + 2;
    const double caption = view.withCaption ? captionHeight(view, width, fonts) : 0;
    const double row = view.withLabels ? letters.line() + 4 : 0;
    rows.title = {kMargin, 2, width, title};
    rows.above = {kMargin, title + 6, width, row};
    rows.caption = {kMargin, size.height() - caption - 2, width, caption};
    rows.below = {kMargin, rows.caption.top() - row - 4, width, row};

    const double left = -cutaway.housing[0].x + 6;
    double leftmost = left;
    for (const LessonPoint& point : cutaway.housing)
        leftmost = std::max(leftmost, -point.x + 1);
    const double across = leftmost + cutaway.rodEnd + 1;
    const double away = cutawayOf(view.joint, {0, true, false}).ball->y;
    const double stem = -away + kBallRadius + kStemLength - kTopUnits;
    const double below = cutaway.gap.above ? kBottomUnits : kBottomUnits + 3;
    const double first = title + 6 + (view.withLabels ? row + 4 : 0);
    const double room = rows.below.top() - 6 - (view.withLabels ? 8 : 0) - first;
    double pixels =
        std::min(width / across, (rows.below.top() - 14 - title - 8) / (kTopUnits + stem + below));
    pixels = std::min(pixels, room / (kTopUnits + below));
    pixels = std::max(0.5, pixels);
    const double high = (kTopUnits + below) * pixels;
    rows.place.pixels = pixels;
    const double top = std::max(first, title + 8 + stem * pixels);
    const double spare = std::max(0.0, first + room - top - high);
    rows.place.origin = {size.width() / 2 + (leftmost - across / 2) * pixels,
                         top + spare / 2 + kTopUnits * pixels};
    const double lift = rows.place.origin.y() - kTopUnits * pixels - std::max(row + 4, stem * pixels);
    rows.above.moveTop(std::max(title + 6, lift));
    rows.below.moveTop(std::min(rows.below.top(), rows.place.y(below) + 8));
    return rows;
}

void addCutawayLabels(CutawayPicture& picture, const CutawayView& view, const Cutaway& cutaway,
                      const CutawayRows& rows, const FontSizes& fonts)
{
    Labels{picture, view, cutaway, rows, fonts}.add();
}

} // namespace rig
