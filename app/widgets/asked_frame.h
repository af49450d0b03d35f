#pragma once

#include <QFrame>

namespace rig {

// A card with a frame around it while it is the question open now.
class AskedFrame : public QFrame
{
public:
    explicit AskedFrame(QWidget* parent = nullptr);

    void setAsked(bool asked);
    bool isAsked() const { return m_isAsked; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool m_isAsked = false;
};

} // namespace rig
