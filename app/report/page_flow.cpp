#include "app/report/page_flow.h"

#include "app/report/pieces.h"
#include "app/wording/report_words.h"

#include <QPainter>

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

// 1/96 inch.
constexpr double kSideMargin = 60;
constexpr double kSmallSideMargin = 38; // A5: a centimetre
constexpr double kEdgeMargin = 46;
constexpr double kHeadText = 13;
constexpr double kFootText = 11;
constexpr double kGap = 10;

double sideMarginOf(Paper paper)
{
    return paper == Paper::A5 ? kSmallSideMargin : kSideMargin;
}

double widthOf(Paper paper)
{
    return sizeOf(paper).width() - 2 * sideMarginOf(paper);
}

struct FrameLines
{
    std::vector<QString> airframe;
    std::vector<QString> title;
    std::vector<QString> caution;
    std::vector<QString> printed;

    double headHeight() const
    {
        return lineHeight(kHeadText) * static_cast<double>(std::max(airframe.size(), title.size()));
    }
    double footHeight() const
    {
        return lineHeight(kFootText) * static_cast<double>(caution.size() + printed.size());
    }
};

FrameLines linesOf(const PageFrame& frame, double width)
{
    // The title takes what the airframe leaves, which is half at least.
    const double half = width / 2 - kGap;
    const double airframe = textAt({}, frame.airframe, kHeadText, Weight::SemiBold).where.width();
    const double title = width - std::min(half, airframe) - 2 * kGap;
    return {wrapped(frame.airframe, half, kHeadText, Weight::SemiBold),
            wrapped(frame.title, title, kHeadText, Weight::Regular),
            wrapped(frame.caution, width, kFootText, Weight::Regular),
            wrapped(frame.printed, width * 0.7, kFootText, Weight::Regular)};
}

QRectF bodyOf(const FrameLines& lines, Paper paper)
{
    const double top = kEdgeMargin + lines.headHeight() + 1.5 * kGap;
    const double bottom = sizeOf(paper).height() - kEdgeMargin - lines.footHeight() - kGap;
    return {sideMarginOf(paper), top, widthOf(paper), bottom - top};
}

// Sections that may break.
using Broken = std::set<int>;

enum class Put { Shapes, Nothing };

// Puts pieces one below the other and begins pages where they do not fit.
class Placing
{
public:
    Placing(const QRectF& body, const Broken& broken, Put what) : m_body{body}, m_broken{broken}, m_what{what}
    {
        begin();
    }

    void place(const std::vector<Piece>& pieces)
    {
        for (std::size_t i = 0; i < pieces.size();) {
            if (pieces[i].startsPage && !isAtTop())
                begin();
            std::size_t end = i + 1;
            while (end < pieces.size() && areTogether(pieces[end - 1], pieces[end]))
                ++end;
            if (!isAtTop() && m_y + heightOf(pieces, i, end) > m_body.bottom())
                begin();
            for (; i < end; ++i)
                placeOne(pieces[i]);
        }
    }

    std::vector<PrintedPage> take() { return std::move(m_pages); }

private:
    bool areTogether(const Piece& one, const Piece& next) const
    {
        const bool isOneSection =
            one.section != 0 && one.section == next.section && !m_broken.contains(one.section);
        return (one.keepsWithNext || isOneSection) && !next.startsPage;
    }

    bool isAtTop() const { return m_y <= m_body.top(); }

    double heightOf(const std::vector<Piece>& pieces, std::size_t from, std::size_t to) const
    {
        double height = 0;
        for (std::size_t i = from; i < to; ++i)
            height += pieces[i].space + pieces[i].height;
        return height;
    }

    void begin()
    {
        m_pages.emplace_back();
        m_y = m_body.top();
    }

    void placeOne(const Piece& piece)
    {
        if (!isAtTop() && m_y + piece.space + piece.height > m_body.bottom())
            begin();
        if (isAtTop() && piece.head)
            put(*piece.head);
        put(piece);
    }

    void put(const Piece& piece)
    {
        if (!isAtTop())
            m_y += piece.space;
        if (m_what == Put::Shapes)
            m_pages.back().add(piece.shapes, {m_body.left(), m_y});
        m_y += piece.height;
    }

    QRectF m_body;
    const Broken& m_broken;
    Put m_what;
    double m_y = 0;
    std::vector<PrintedPage> m_pages;
};

std::size_t pagesOf(const std::vector<Piece>& pieces, const QRectF& body, const Broken& broken)
{
    Placing trial{body, broken, Put::Nothing};
    trial.place(pieces);
    return trial.take().size();
}

// The fewest pages there can be, and as many sections in one piece as that allows.
Broken brokenAmong(const std::vector<Piece>& pieces, const QRectF& body)
{
    Broken broken;
    const std::size_t kept = pagesOf(pieces, body, broken);
    for (const Piece& piece : pieces)
        if (piece.section != 0)
            broken.insert(piece.section);
    const std::size_t fewest = pagesOf(pieces, body, broken);
    if (fewest >= kept)
        return {};
    for (const int section : Broken{broken}) {
        broken.erase(section);
        if (pagesOf(pieces, body, broken) > fewest)
            broken.insert(section);
    }
    return broken;
}

PageText toRight(PageText text, double right)
{
    const double by = right - text.where.right();
    text.where.translate(by, 0);
    text.baseline.rx() += by;
    return text;
}

void addHead(PrintedPage& page, const FrameLines& lines, const QRectF& body)
{
    double y = kEdgeMargin;
    for (const QString& line : lines.airframe) {
        page.texts.push_back(textAt({body.left(), y}, line, kHeadText, Weight::SemiBold));
        y += lineHeight(kHeadText);
    }
    y = kEdgeMargin;
    for (const QString& line : lines.title) {
        page.texts.push_back(
            toRight(textAt({0, y}, line, kHeadText, Weight::Regular, Role::InkSoft), body.right()));
        y += lineHeight(kHeadText);
    }
    const double rule = body.top() - kGap;
    page.lines.push_back({{body.left(), rule}, {body.right(), rule}, Role::InkSoft, 1});
}

void addFoot(PrintedPage& page, const FrameLines& lines, const QRectF& body, const QString& number)
{
    const double rule = body.bottom() + kGap / 2;
    page.lines.push_back({{body.left(), rule}, {body.right(), rule}, Role::InkSoft, 1});
    double y = body.bottom() + kGap;
    for (const QString& line : lines.caution) {
        page.texts.push_back(textAt({body.left(), y}, line, kFootText));
        y += lineHeight(kFootText);
    }
    page.texts.push_back(
        toRight(textAt({0, y}, number, kFootText, Weight::Regular, Role::InkSoft), body.right()));
    for (const QString& line : lines.printed) {
        page.texts.push_back(textAt({body.left(), y}, line, kFootText, Weight::Regular, Role::InkSoft));
        y += lineHeight(kFootText);
    }
}

// Of a place that stands nowhere there is no number.
void tellPages(std::vector<PrintedPage>& pages)
{
    std::map<int, int> numbers;
    for (std::size_t i = 0; i < pages.size(); ++i)
        for (const int place : pages[i].places)
            numbers.emplace(place, static_cast<int>(i) + 1);
    for (PrintedPage& page : pages)
        for (PageText& text : page.texts) {
            if (text.pageOf == 0)
                continue;
            const auto found = numbers.find(text.pageOf);
            text.text = found == numbers.end() ? QString{} : QLocale{}.toString(found->second);
        }
}

} // namespace

Paper usualPaper(const QLocale& locale)
{
    return locale.measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter : Paper::A4;
}

QSizeF sizeOf(Paper paper)
{
    constexpr double kPerMillimetre = 96 / 25.4;
    switch (paper) {
    case Paper::A4:
        return {210 * kPerMillimetre, 297 * kPerMillimetre};
    case Paper::A5:
        return {148 * kPerMillimetre, 210 * kPerMillimetre};
    case Paper::Letter:
        break;
    }
    return {8.5 * 96, 11 * 96};
}

void PrintedPage::add(const PrintedPage& other, QPointF at)
{
    for (PageText text : other.texts) {
        text.baseline += at;
        text.where.translate(at);
        texts.push_back(std::move(text));
    }
    for (PageLine line : other.lines) {
        line.from += at;
        line.to += at;
        lines.push_back(line);
    }
    for (PageBox box : other.boxes) {
        box.where.translate(at);
        boxes.push_back(box);
    }
    for (PageMark mark : other.marks) {
        mark.where.translate(at);
        marks.push_back(mark);
    }
    for (PagePicture picture : other.pictures) {
        picture.where.translate(at);
        pictures.push_back(std::move(picture));
    }
    places.insert(places.end(), other.places.begin(), other.places.end());
}

QSizeF sizeOf(const PageFlow& flow)
{
    const QSizeF upright = sizeOf(flow.paper);
    return flow.isAcross ? upright.transposed() : upright;
}

std::vector<PrintedPage> placedIn(const QRectF& body, std::span<const Block> blocks, Progress* progress)
{
    const std::vector<Piece> pieces = piecesOf(blocks, body.width(), body.height(), progress);
    if (isStopped(progress))
        return {};
    const Broken broken = brokenAmong(pieces, body);
    Placing placing{body, broken, Put::Shapes};
    placing.place(pieces);
    std::vector<PrintedPage> pages = placing.take();
    tellPages(pages);
    return pages;
}

PageFlow layoutPages(const PageFrame& frame, std::span<const Block> blocks, Paper paper, Progress* progress)
{
    const FrameLines lines = linesOf(frame, widthOf(paper));
    PageFlow flow;
    flow.paper = paper;
    flow.body = bodyOf(lines, paper);
    flow.pages = placedIn(flow.body, blocks, progress);
    const int count = static_cast<int>(flow.pages.size());
    for (int i = 0; i < count; ++i) {
        PrintedPage& page = flow.pages[static_cast<std::size_t>(i)];
        addHead(page, lines, flow.body);
        addFoot(page, lines, flow.body, ReportWords::pageOf(i + 1, count));
    }
    return flow;
}

void paint(QPainter& painter, const PrintedPage& page, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    for (const PageBox& box : page.boxes) {
        painter.setPen(QPen{theme.color(box.role), 1});
        painter.drawRect(box.where);
    }
    for (const PageLine& line : page.lines) {
        painter.setPen(QPen{theme.color(line.role), line.width, Qt::SolidLine, Qt::FlatCap});
        painter.drawLine(line.from, line.to);
    }
    for (const PageMark& mark : page.marks)
        paintMark(painter, shapeOf(mark.says), shapeRoleOf(mark.says), mark.where, theme);
    for (const PagePicture& picture : page.pictures) {
        painter.save();
        painter.translate(picture.where.topLeft());
        picture.picture.paint(painter, theme);
        painter.restore();
    }
    for (const PageText& text : page.texts) {
        QFont font = plainFontOf(text.pixels, text.weight);
        font.setStrikeOut(text.struck);
        painter.setFont(font);
        painter.setPen(theme.color(text.role));
        painter.drawText(text.baseline, text.text);
    }
    painter.restore();
}

} // namespace rig
