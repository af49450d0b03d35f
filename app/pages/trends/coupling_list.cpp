#include "app/pages/trends/coupling_list.h"

#include "app/widgets/focus_ring.h"
#include "app/widgets/plain_tip.h"
#include "app/widgets/trend_widget.h"
#include "app/wording/standing_words.h"
#include "app/wording/trends_page_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr std::size_t kSmallReadings = 40;
constexpr int kFarBeyond = 1 << 20;

// Places in a row at text size 1; eight rows fit the page at 1280x800.
constexpr double kRowHeight = 80;
constexpr double kMarkSide = 14;
constexpr double kEdge = 11;
constexpr double kNameTop = 7;
constexpr double kWordTop = 25;
constexpr double kSmallTop = 42;

// The small trend needs no more than its last readings: a long history is not copied for it.
TrendSeries lastOf(const TrendSeries& series)
{
    TrendSeries last;
    last.name = series.name;
    last.hasGap = series.hasGap;
    last.fittings = series.fittings;
    for (auto one = series.readings.rbegin();
         one != series.readings.rend() && last.readings.size() < kSmallReadings; ++one)
        if (one->state == SeatState::Locked && !one->setAside)
            last.readings.push_back(*one);
    std::ranges::reverse(last.readings);
    return last;
}

} // namespace

TrendRow::TrendRow(QWidget* parent) : QAbstractButton{parent}, m_small{new TrendWidget{this}}
{
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_small->setFocusPolicy(Qt::NoFocus);
    m_small->setAttribute(Qt::WA_TransparentForMouseEvents);
}

void TrendRow::show(const CouplingTrend& trend)
{
    m_says = trend.standing.says;
    m_name = QString::fromStdString(trend.coupling.name);
    m_word = StandingWords::word(trend.standing);
    m_small->setSmall(lastOf(trend.series), kSmallReadings);
    setAccessibleName(m_name);
    setAccessibleDescription(m_word);
    setToolTip(plainTip(m_name + QLatin1Char('\n') + m_word));
    update();
}

void TrendRow::setLook(const Look& look)
{
    m_look = look;
    m_small->setLook(look);
    updateGeometry();
    placeSmall();
    update();
}

QSize TrendRow::sizeHint() const
{
    const double scale = m_look.fonts.scale;
    return {static_cast<int>(240 * scale), static_cast<int>(std::lround(kRowHeight * scale))};
}

QSize TrendRow::minimumSizeHint() const
{
    return {120, sizeHint().height()};
}

void TrendRow::placeSmall()
{
    const double scale = m_look.fonts.scale;
    const QRectF where{kEdge, kSmallTop * scale, width() - 2 * kEdge, height() - kSmallTop * scale - 6};
    m_small->setGeometry(where.toAlignedRect());
}

void TrendRow::resizeEvent(QResizeEvent* event)
{
    QAbstractButton::resizeEvent(event);
    placeSmall();
}

void TrendRow::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        emit stepAsked(-1);
        break;
    case Qt::Key_Down:
        emit stepAsked(1);
        break;
    case Qt::Key_Home:
        emit stepAsked(-kFarBeyond);
        break;
    case Qt::Key_End:
        emit stepAsked(kFarBeyond);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        click();
        break;
    default:
        QAbstractButton::keyPressEvent(event);
    }
}

void TrendRow::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = m_look.fonts.scale;
    const QRectF frame = QRectF{rect()}.adjusted(1, 1, -1, -1);
    if (isChecked() || underMouse()) {
        painter.setPen(isChecked() ? QPen{m_look.theme.color(Role::Accent), 1.6} : QPen{Qt::NoPen});
        painter.setBrush(m_look.theme.color(Role::AccentFill));
        painter.drawRoundedRect(frame, 6, 6);
    }
    if (hasFocus())
        paintFocusRing(painter, frame.adjusted(2, 2, -2, -2), m_look.theme); // within that of the chosen one
    const double side = kMarkSide * scale;
    const QRectF mark{kEdge, (kNameTop + 2) * scale, side, side};
    paintMark(painter, shapeOf(m_says), shapeRoleOf(m_says), mark, m_look.theme);

    const double left = mark.right() + 8 * scale;
    const double width = this->width() - left - kEdge;
    const auto line = [&](const QString& text, const QFont& font, Role role, double top, double height) {
        painter.setFont(font);
        painter.setPen(m_look.theme.color(role));
        const QString fitting =
            painter.fontMetrics().elidedText(text, Qt::ElideMiddle, static_cast<int>(width));
        painter.drawText(QRectF{left, top * scale, width, height * scale}, Qt::AlignLeft | Qt::AlignVCenter,
                         fitting);
    };
    const Weight weight = isChecked() ? Weight::SemiBold : Weight::Medium;
    line(m_name, fontOf(m_look.fonts.body(), weight), Role::Ink, kNameTop, 18);
    line(m_word, fontOf(m_look.fonts.small(), Weight::Medium), textRoleOf(m_says), kWordTop, 16);
}

CouplingList::CouplingList(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(9, 5, 9, 5);
    outer->setSpacing(4);
    auto* top = new QHBoxLayout;
    top->setContentsMargins(6, 0, 6, 0);
    auto* count = new QLabel{TrendsPageWords::lastReadings(static_cast<int>(kSmallReadings))};
    count->setTextFormat(Qt::PlainText);
    count->setProperty("kind", "soft");
    count->setWordWrap(true);
    top->addWidget(count, 1);
    m_aircraft = new QPushButton{TrendsPageWords::aircraft()};
    m_aircraft->setProperty("kind", "choice");
    m_aircraft->setCheckable(true);
    m_aircraft->setObjectName("aircraftButton");
    connect(m_aircraft, &QPushButton::clicked, this, &CouplingList::aircraftAsked);
    top->addWidget(m_aircraft);
    outer->addLayout(top);

    m_scroll = new QScrollArea;
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* inside = new QWidget;
    m_layout = new QVBoxLayout{inside};
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(2);
    m_layout->addStretch(1);
    m_scroll->setWidget(inside);
    outer->addWidget(m_scroll, 1);
}

void CouplingList::setLook(const Look& look)
{
    m_look = look;
    setFixedWidth(static_cast<int>(std::lround(300 * std::min(look.fonts.scale, 1.25))));
    for (TrendRow* one : m_rows)
        one->setLook(look);
}

void CouplingList::setAircraftShown(bool shown)
{
    m_aircraft->setChecked(shown);
}

TrendRow* CouplingList::row(std::size_t index)
{
    while (m_rows.size() <= index) {
        auto* one = new TrendRow;
        one->setLook(m_look);
        const std::size_t at = m_rows.size();
        one->setObjectName(QStringLiteral("trendRow%1").arg(at));
        connect(one, &QAbstractButton::clicked, this, [this, at] { step(at, 0); });
        connect(one, &TrendRow::stepAsked, this, [this, at](int by) { step(at, by); });
        m_layout->insertWidget(static_cast<int>(at), one);
        m_rows.push_back(one);
    }
    return m_rows[index];
}

void CouplingList::display(const TrendsView& view, std::optional<CouplingId> chosen)
{
    m_couplings.clear();
    for (const CouplingTrend& trend : view.couplings) {
        TrendRow* one = row(m_couplings.size());
        one->show(trend);
        one->setChecked(trend.coupling.id == chosen);
        m_couplings.push_back(trend.coupling.id);
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i]->setVisible(i < m_couplings.size());
}

void CouplingList::bringIntoView(CouplingId coupling)
{
    const auto found = std::ranges::find(m_couplings, coupling);
    if (found != m_couplings.end())
        m_scroll->ensureWidgetVisible(m_rows[static_cast<std::size_t>(found - m_couplings.begin())], 0, 0);
}

void CouplingList::step(std::size_t from, int by)
{
    const int last = static_cast<int>(m_couplings.size()) - 1;
    const auto to = static_cast<std::size_t>(std::clamp(static_cast<int>(from) + by, 0, last));
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i]->setChecked(i == to);
    m_rows[to]->setFocus();
    m_scroll->ensureWidgetVisible(m_rows[to], 0, 0);
    emit couplingChosen(m_couplings[to]);
}

} // namespace rig
